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
        return of(power.measured(), voltage.measured(), current.measured());
    }

    /** The power factor from the mean power, the rms voltage and the rms current of one window. */
    public static Measured of(Measured power, Measured voltage, Measured current) {
        Measured apparent = voltage.with(current, (u, i) -> u * i);
        Measured factor = apparent.then(s -> power.then(p -> Measured.ratio(p, s, "voltage or current is zero")));
        return factor.present() && factor.value() < 0 ? factor.noted("input current reversed?") : factor;
    }
}
