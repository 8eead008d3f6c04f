package lampproof.measure;

/**
 * How long the highest peak of a channel stays above a level [s].
 *
 * <p>Nothing is filtered: {@link Peak} measures the raw peak, this class its width.
 */
public final class SpikeWidth extends PiecewiseMeasurement {

    /** Level over plateau above which a value counts as spike [-]. */
    public static final double ABOVE_PLATEAU = 1.05;

    private final Channel channel;
    private final double level;
    private boolean above;
    private double begin;
    private double top;
    private int points;
    private double highestTop = Double.NEGATIVE_INFINITY;
    private double width;
    private int pointsOfHighest;

    /** Measures how long the highest peak stays above a level [unit of the channel]. */
    public SpikeWidth(Window window, Channel channel, double level) {
        super(window);
        this.channel = channel;
        this.level = level;
    }

    @Override
    protected void add(Piece piece) {
        double from = piece.from(channel);
        double to = piece.to(channel);
        if (!above && from > level) {
            open(piece.start(), from);
        }
        if (!above && to > level) {
            open(piece.passes(channel, level), to);
        } else if (above && to > level) {
            top = Math.max(top, to);
            points++;
        } else if (above) {
            close(piece.passes(channel, level));
        }
    }

    @Override
    protected Measured measured() {
        if (above) {
            close(window().end());
        }
        if (highestTop == Double.NEGATIVE_INFINITY) {
            return Measured.absent("never above the level");
        }
        return Measured.of(width).noted(pointsOfHighest == 1 ? "peak on a single point: step too coarse to know" : "");
    }

    private void open(double time, double value) {
        above = true;
        begin = time;
        top = value;
        points = 1;
    }

    private void close(double time) {
        above = false;
        if (top > highestTop) {
            highestTop = top;
            width = time - begin;
            pointsOfHighest = points;
        }
    }
}
