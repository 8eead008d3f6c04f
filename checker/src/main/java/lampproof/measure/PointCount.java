package lampproof.measure;

/** The number of steps in time from which a window is drawn [-], of those in which a gate is on, and the longest ones. */
public final class PointCount extends PiecewiseMeasurement {

    private final Gate gate;
    private double steps;
    private double on;
    private double longest;
    private double longestOn;

    /** Counts the steps of a record. */
    public PointCount(Window window, Gate gate) {
        super(window);
        this.gate = gate;
    }

    /** The longest step [s]; zero when there is none. */
    public Measured longest() {
        return result().map(all -> longest);
    }

    /** The steps in which the gate is on throughout [-]. */
    public Measured whileOn() {
        return result().map(all -> on);
    }

    /** The longest step in which the gate is on throughout [s]; zero when there is none. */
    public Measured longestOn() {
        return result().map(all -> longestOn);
    }

    @Override
    protected void add(Piece piece) {
        if (piece.width() > 0) {
            steps++;
            longest = Math.max(longest, piece.width());
            boolean throughout =
                    piece.from(gate.channel()) >= gate.threshold() && piece.to(gate.channel()) >= gate.threshold();
            if (throughout) {
                on++;
                longestOn = Math.max(longestOn, piece.width());
            }
        }
    }

    @Override
    protected Measured measured() {
        return Measured.of(steps);
    }
}
