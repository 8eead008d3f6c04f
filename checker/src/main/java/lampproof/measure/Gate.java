package lampproof.measure;

/**
 * A channel read as on or off.
 *
 * @param channel the gate signal
 * @param threshold on at and above this value, in the channel's unit [own unit]
 * @param hysteresis how far the signal must go beyond the threshold before a crossing counts, in the channel's unit [own unit]
 */
public record Gate(Channel channel, double threshold, double hysteresis) {

    /** A gate without hysteresis. */
    public Gate(Channel channel, double threshold) {
        this(channel, threshold, 0);
    }
}
