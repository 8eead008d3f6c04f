package lampproof.measure;

/**
 * The largest value of an inductor current, points left out that no voltage across the inductor could have brought about.
 *
 * <p>A simulator that has to step over a corner of a source in some femtoseconds may write single points that lie an ampere
 * beside the current: it divides one tiny number by another. The current of an inductance cannot move faster than its voltage
 * over its inductance; {@value #SLACK} times as much is allowed, for a core that saturates. Where more than a thousandth of
 * the points would have to go, current and voltage are not those of one inductance, and every point counts.
 */
public final class ReachablePeak extends PiecewiseMeasurement {

    private static final double SLACK = 10;
    private static final double MOST_LEFT_OUT = 1e-3;

    private final Channel voltage;
    private final Channel current;
    private final double inductance;
    private double extreme = Double.NEGATIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private double believedTime = Double.NaN;
    private double believed;
    private long points;
    private long leftOut;

    /**
     * Measures the peak current of an inductor.
     *
     * @param voltage across it [V]
     * @param current through it [A]
     * @param inductance of it [H]
     */
    public ReachablePeak(Window window, Channel voltage, Channel current, double inductance) {
        super(window);
        this.voltage = voltage;
        this.current = current;
        this.inductance = inductance;
    }

    @Override
    protected void add(Piece piece) {
        if (Double.isNaN(believedTime)) {
            takePoint(piece.start(), piece.from(current));
            greatest = extreme;
        }
        points++;
        greatest = Math.max(greatest, piece.to(current));
        double drive = Math.max(Math.abs(piece.from(voltage)), Math.abs(piece.to(voltage)));
        double reach = SLACK * drive * (piece.end() - believedTime) / inductance;
        if (Math.abs(piece.to(current) - believed) <= reach) {
            takePoint(piece.end(), piece.to(current));
        } else {
            leftOut++;
        }
    }

    private void takePoint(double time, double value) {
        believedTime = time;
        believed = value;
        extreme = Math.max(extreme, value);
    }

    @Override
    protected Measured measured() {
        if (leftOut == 0 || leftOut > MOST_LEFT_OUT * points) {
            return Measured.of(greatest);
        }
        return Measured.of(extreme)
                .noted(leftOut + " points left out that the voltage of the inductor cannot bring about");
    }
}
