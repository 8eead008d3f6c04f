package lampproof.measure;

/** The time of a channel from the start of the window until it first reaches a level [s]. */
public final class TimeToReach extends PiecewiseMeasurement {

    private final Channel channel;
    private final double level;
    private double reached = Double.NaN;

    /**
     * Measures the time until a level is reached.
     *
     * @param level the level [unit of the channel]
     */
    public TimeToReach(Window window, Channel channel, double level) {
        super(window);
        this.channel = channel;
        this.level = level;
    }

    @Override
    protected void add(Piece piece) {
        if (!Double.isNaN(reached)) {
            return;
        }
        if (piece.from(channel) >= level) {
            reached = piece.start();
        } else if (piece.to(channel) >= level) {
            reached = piece.passes(channel, level);
        }
    }

    /** The time [s]. */
    @Override
    protected Measured measured() {
        return Double.isNaN(reached)
                ? Measured.absent(channel.name() + " never reaches " + level)
                : Measured.of(reached - window().start());
    }
}
