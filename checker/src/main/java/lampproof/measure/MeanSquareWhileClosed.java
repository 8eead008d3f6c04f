package lampproof.measure;

/**
 * The mean over the whole window of a squared current, counted only while the gate holds the switch closed. A switch
 * with hysteresis closes that much above the threshold and opens that much below it.
 */
public final class MeanSquareWhileClosed extends PiecewiseMeasurement {

    private final Channel current;
    private final Gate gate;
    private boolean begun;
    private boolean closed;
    private double area;

    /** Measures a current while a gate is closed. */
    public MeanSquareWhileClosed(Window window, Channel current, Gate gate) {
        super(window);
        this.current = current;
        this.gate = gate;
    }

    @Override
    protected void add(Piece piece) {
        if (!begun) {
            closed = piece.from(gate.channel()) >= gate.threshold();
            begun = true;
        }
        boolean before = closed;
        closed = piece.to(gate.channel()) >= gate.threshold() + (before ? -gate.hysteresis() : gate.hysteresis());
        if (before && closed) {
            area += piece.areaOfProduct(current, current);
        }
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
