package lampproof.measure;

/**
 * The capacitance that a capacitor shows by its voltage and its current [F].
 *
 * <p>Least squares of {@code i = C dv/dt + I} over all pieces, each as a whole: its charge against the step of the
 * voltage and its width. A steady current I that the probes miss does no harm and is not reported.
 */
public final class Capacitance extends PiecewiseMeasurement {

    private final Channel voltage;
    private final Channel current;
    private final PlaneFit fit = new PlaneFit();

    /** Measures a capacitance from the voltage across it and the current into it. */
    public Capacitance(Window window, Channel voltage, Channel current) {
        super(window);
        this.voltage = voltage;
        this.current = current;
    }

    @Override
    protected void add(Piece piece) {
        fit.add(piece.to(voltage) - piece.from(voltage), piece.width(), piece.area(current));
    }

    @Override
    protected Measured measured() {
        return fit.slope("the voltage does not change");
    }
}
