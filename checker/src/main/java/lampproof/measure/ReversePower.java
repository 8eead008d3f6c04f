package lampproof.measure;

/**
 * The mean power of a diode that carries a reverse current at a reverse voltage.
 *
 * <p>It is joined by straight lines from point to point and zero at a point where either is not reverse: of the piece in
 * which a switch turns the diode off, voltage and current jump somewhere within, and half of it counts.
 */
public final class ReversePower extends PiecewiseMeasurement {

    private final Channel voltage;
    private final Channel current;
    private double area;

    /** Measures the power of a diode from its forward voltage and its forward current. */
    public ReversePower(Window window, Channel voltage, Channel current) {
        super(window);
        this.voltage = voltage;
        this.current = current;
    }

    @Override
    protected void add(Piece piece) {
        double before = reverse(piece.from(voltage), piece.from(current));
        double after = reverse(piece.to(voltage), piece.to(current));
        area += piece.width() * (before + after) / 2;
    }

    private static double reverse(double voltage, double current) {
        return voltage < 0 && current < 0 ? voltage * current : 0;
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
