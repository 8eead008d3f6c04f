package lampproof.physics;

/**
 * What a class-2 ceramic capacitor keeps under direct voltage.
 *
 * <p>{@code C = Cnom (1 - loss)}; ripple grows by {@code 1 / (1 - loss)}.
 *
 * <p>Valid for the loss that the maker states at the working voltage; X7R parts of high value lose typically 40 to 80
 * per cent at rated voltage (from memory), which X7R does not limit.
 *
 * <p>Source: makers' data sheets, common practice, no source.
 */
public final class CeramicBias {

    private CeramicBias() {}

    /**
     * Capacitance under bias.
     *
     * @param nominal capacitance without bias [F]
     * @param loss share lost at the working voltage, below 1 [-]
     * @return capacitance [F]
     */
    public static double capacitance(double nominal, double loss) {
        Require.positive("nominal capacitance [F]", nominal);
        Require.notNegative("capacitance loss [-]", loss);
        Require.below("capacitance loss [-]", loss, "its upper end", 1);
        return nominal * (1 - loss);
    }
}
