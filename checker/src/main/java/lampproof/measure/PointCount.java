package lampproof.measure;

/** The number of steps in time from which a window is drawn [-], and of those in which a gate is on. */
public final class PointCount extends PieceByPiece {

    private final Gate gate;
    private double steps;
    private double on;

    /** Counts the steps of a record. */
    public PointCount(Window window, Gate gate) {
        super(window);
        this.gate = gate;
    }

    /** The steps in which the gate is on throughout [-]. */
    public Measured whileOn() {
        return result().map(all -> on);
    }

    @Override
    protected void add(Piece piece) {
        if (piece.width() > 0) {
            steps++;
            boolean throughout =
                    piece.from(gate.channel()) >= gate.threshold() && piece.to(gate.channel()) >= gate.threshold();
            on += throughout ? 1 : 0;
        }
    }

    @Override
    protected Measured measured() {
        return Measured.of(steps);
    }
}
