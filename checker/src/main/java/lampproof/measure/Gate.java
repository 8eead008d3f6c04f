package lampproof.measure;

/**
 * A channel read as on or off.
 *
 * @param channel the gate signal
 * @param threshold on at and above this value [unit of the channel]
 * @param hysteresis how far the signal must go beyond the threshold before a crossing counts [unit of the channel]
 */
public record Gate(Channel channel, double threshold, double hysteresis) {

    /** A gate without hysteresis, with its threshold [unit of the channel]. */
    public Gate(Channel channel, double threshold) {
        this(channel, threshold, 0);
    }
}
