package lampproof.measure;

/** The mean over the whole window of a squared current, taken only while the gate holds the switch closed. */
public final class MeanSquareWhileClosed extends Measurement {

    private final Channel current;
    private final Gate gate;
    private double area;

    /** Measures a current while a gate is closed. */
    public MeanSquareWhileClosed(Window window, Channel current, Gate gate) {
        super(window);
        this.current = current;
        this.gate = gate;
    }

    @Override
    protected void add(Piece piece) {
        if (closed(piece.from(gate.channel())) && closed(piece.to(gate.channel()))) {
            area += piece.areaOfProduct(current, current);
        }
    }

    private boolean closed(double level) {
        return level >= gate.threshold();
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
