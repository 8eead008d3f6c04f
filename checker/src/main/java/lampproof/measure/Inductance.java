package lampproof.measure;

/**
 * The inductance that a coil shows by its voltage and its current [H].
 *
 * <p>Least squares of {@code v = L di/dt + R i} over all pieces, each as a whole: its volt-seconds against the step and
 * the charge of its current. The resistance of the winding is part of the fit and is not reported.
 */
public final class Inductance extends PiecewiseMeasurement {

    private final Channel voltage;
    private final Channel current;
    private final PlaneFit fit = new PlaneFit();

    /** Measures the inductance of a coil from the voltage across it and the current through it. */
    public Inductance(Window window, Channel voltage, Channel current) {
        super(window);
        this.voltage = voltage;
        this.current = current;
    }

    @Override
    protected void add(Piece piece) {
        fit.add(piece.to(current) - piece.from(current), piece.area(current), piece.area(voltage));
    }

    @Override
    protected Measured measured() {
        return fit.slope("the current does not change");
    }
}
