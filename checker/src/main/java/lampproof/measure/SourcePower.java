package lampproof.measure;

/**
 * The mean power that a source of a simulated circuit delivers [W].
 *
 * <p>Simulators count a source's current into its positive terminal, so that a source that feeds shows negative power;
 * the sign is turned here, once, and said so. Power that flows back stays negative.
 */
public final class SourcePower extends Measurement {

    private static final String TURNED = "sign turned";

    private final MeanProduct power;

    /** Measures the power of a source by its voltage and the simulator's current. */
    public SourcePower(Window window, Channel voltage, Channel current) {
        super(window);
        power = new MeanProduct(window, voltage, current);
    }

    /** The power that a source delivers, from the mean of its voltage times the simulator's current [W]. */
    public static Measured reversed(Measured meanProduct) {
        Measured power = meanProduct.map(p -> -p);
        String back = power.present() && power.value() < 0 ? "input current reversed?" : "";
        return power.noted(power.present() ? TURNED : "").noted(back);
    }

    @Override
    protected void add(Pieces pieces) {
        power.add(pieces);
    }

    @Override
    protected Measured measured() {
        return reversed(power.measured());
    }
}
