package lampproof.physics;

/**
 * Series resistance of a capacitor from its dissipation factor.
 *
 * <p>{@code ESR = DF / (2 pi f C)}.
 *
 * <p>Valid at the frequency of the dissipation factor; film and electrolytic parts change with frequency.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016, eq. 32-34.
 */
public final class CapacitorResistance {

    private CapacitorResistance() {}

    /**
     * Equivalent series resistance.
     *
     * @param dissipationFactor tangent of the loss angle [-]
     * @param frequency frequency at which it was stated [Hz]
     * @param capacitance capacitance [F]
     * @return series resistance [Ohm]
     */
    public static double of(double dissipationFactor, double frequency, double capacitance) {
        Require.notNegative("dissipation factor [-]", dissipationFactor);
        Require.positive("frequency [Hz]", frequency);
        Require.positive("capacitance [F]", capacitance);
        return dissipationFactor / (2 * Math.PI * frequency * capacitance);
    }
}
