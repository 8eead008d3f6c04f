package lampproof.measure;

/** The time integral of the product of a voltage and a current [J]. */
public final class Energy extends Measurement {

    private final Channel voltage;
    private final Channel current;
    private double energy;

    /** Measures the energy that a voltage and a current carry. */
    public Energy(Window window, Channel voltage, Channel current) {
        super(window);
        this.voltage = voltage;
        this.current = current;
    }

    @Override
    protected void add(Pieces pieces) {
        energy += pieces.areaOfProduct(voltage, current);
    }

    @Override
    protected Measured measured() {
        return Measured.of(energy);
    }
}
