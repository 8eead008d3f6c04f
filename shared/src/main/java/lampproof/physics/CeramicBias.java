package lampproof.physics;

/**
 * What a class-2 ceramic capacitor keeps under direct voltage.
 *
 * <p>{@code C = Cnom (1 - loss)}; ripple grows by {@code 1 / (1 - loss)}.
 *
 * <p>Valid for the loss that the maker states at the working voltage; X7R parts of high value lose typically 40 to 80
 * per cent at rated voltage (from memory), which X7R does not limit.
 *
 * <p>Between zero and that voltage {@code C = Cnom / (1 + (V / Vh)^2)}, Vh being the voltage at which half is left: a curve
 * within a tenth or so of those that makers print (from memory). It holds the energy
 * {@code Cnom Vh^2 ln(1 + (V / Vh)^2) / 2}.
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

    /**
     * Voltage at which half of the capacitance is left.
     *
     * @param left share left at the rated voltage, above 0 up to 1 [-]
     * @param rated rated voltage [V]
     * @return voltage; infinite when all is left [V]
     */
    public static double halfVoltage(double left, double rated) {
        Require.within("capacitance left [-]", left, Double.MIN_NORMAL, 1);
        Require.positive("rated voltage [V]", rated);
        return rated / Math.sqrt(1 / left - 1);
    }

    /**
     * Share of the capacitance that is left for small changes at a voltage.
     *
     * @param voltage voltage [V]
     * @param half voltage at which half is left [V]
     * @return share [-]
     */
    public static double left(double voltage, double half) {
        return 1 / (1 + (voltage / half) * (voltage / half));
    }

    /**
     * Energy that is stored at a voltage.
     *
     * @param nominal capacitance without bias [F]
     * @param half voltage at which half is left; infinite for a capacitor that voltage does not change [V]
     * @param voltage voltage [V]
     * @return energy [J]
     */
    public static double energy(double nominal, double half, double voltage) {
        return Double.isInfinite(half)
                ? 0.5 * nominal * voltage * voltage
                : 0.5 * nominal * half * half * Math.log1p((voltage / half) * (voltage / half));
    }
}
