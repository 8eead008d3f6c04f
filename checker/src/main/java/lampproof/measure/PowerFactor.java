package lampproof.measure;

/**
 * Mean power over the product of the rms voltage and the rms current [-], negative when power flows back.
 *
 * <p>Source: IEEE Std 1459-2010, 3.1.1.
 */
public final class PowerFactor extends Measurement {

    private final MeanProduct power;
    private final RootMeanSquare voltage;
    private final RootMeanSquare current;

    /** Measures the power factor of a voltage and a current. */
    public PowerFactor(Window window, Channel voltage, Channel current) {
        super(window);
        power = new MeanProduct(window, voltage, current);
        this.voltage = new RootMeanSquare(window, voltage);
        this.current = new RootMeanSquare(window, current);
    }

    @Override
    protected void add(Pieces pieces) {
        power.add(pieces);
        voltage.add(pieces);
        current.add(pieces);
    }

    @Override
    protected Measured measured() {
        Measured apparent = voltage.measured().with(current.measured(), (u, i) -> u * i);
        Measured factor =
                apparent.then(s -> power.measured().then(p -> Measured.ratio(p, s, "voltage or current is zero")));
        return factor.present() && factor.value() < 0 ? factor.noted("input current reversed?") : factor;
    }
}
