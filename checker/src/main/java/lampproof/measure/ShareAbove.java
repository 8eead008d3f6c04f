package lampproof.measure;

/** The share of the window in which a channel is above a level [-]. */
public final class ShareAbove extends Measurement {

    private final Channel channel;
    private final double level;
    private double time;

    /**
     * Measures how long a channel is above a level.
     *
     * @param level level [unit of the channel]
     */
    public ShareAbove(Window window, Channel channel, double level) {
        super(window);
        this.channel = channel;
        this.level = level;
    }

    @Override
    protected void add(Piece piece) {
        double from = piece.from(channel) - level;
        double to = piece.to(channel) - level;
        double high = Math.max(from, to);
        double low = Math.min(from, to);
        if (high > 0) {
            time += piece.width() * (low >= 0 ? 1 : high / (high - low));
        }
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(time, window().length(), "the window has no length");
    }
}
