package lampproof.measure;

/**
 * The mean power of a diode while it conducts.
 *
 * <p>Pieces in which the voltage is negative at either end count as nothing: a diode that blocks loses nothing, and the
 * sampled product of the piece in which it begins to conduct is not a loss but the charging of the node beside it.
 */
public final class ForwardPower extends PiecewiseMeasurement {

    private final Channel voltage;
    private final Channel current;
    private double area;

    /** Measures the power of a diode from its forward voltage and its current. */
    public ForwardPower(Window window, Channel voltage, Channel current) {
        super(window);
        this.voltage = voltage;
        this.current = current;
    }

    @Override
    protected void add(Piece piece) {
        if (piece.from(voltage) >= 0 && piece.to(voltage) >= 0) {
            area += piece.areaOfProduct(voltage, current);
        }
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
