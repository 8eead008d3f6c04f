package lampproof.measure;

/**
 * The share of points at which a channel turns back for at least the third time in a row, as numerical ringing makes it
 * do [-].
 *
 * <p>The trapezoidal rule answers a step that it cannot follow with a value that is too large and too small in turns,
 * one point each. A resolved real oscillation has many points from one turn to the next. Turns of less than a
 * thousandth of the swing so far are the rounding of the solver and do not count.
 */
public final class PointAlternation extends PiecewiseMeasurement {

    private static final double LEAST_TURN = 1e-3;
    private static final int IN_A_ROW = 3;

    private final Channel channel;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;
    private double before;
    private int turns;
    private double count;
    private double points;

    /** Measures how often a channel alternates. */
    public PointAlternation(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Piece piece) {
        low = Math.min(low, piece.to(channel));
        high = Math.max(high, piece.to(channel));
        double step = piece.to(channel) - piece.from(channel);
        boolean turned = step * before < 0 && Math.min(Math.abs(step), Math.abs(before)) > LEAST_TURN * (high - low);
        turns = turned ? turns + 1 : 0;
        count += turns >= IN_A_ROW ? 1 : 0;
        points++;
        before = step;
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(count, points, "no points");
    }
}
