package lampproof.measure;

/** The share of the window in which a channel is above a level [-]. */
public final class ShareAbove extends PieceByPiece {

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
        time += piece.width() - piece.timeUpTo(level, channel);
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(time, window().length(), "the window has no length");
    }
}
