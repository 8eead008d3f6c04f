package lampproof.physics;

/**
 * Power factor and what it says about apparent power; it says nothing about efficiency.
 *
 * <p>{@code PF = P / (Vrms Irms) = distortion factor x cos phi1}; {@code S = P / PF}.
 *
 * <p>Valid in general; the product form for a sinusoidal voltage.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.3,
 * eq. (20.23)-(20.28).
 */
public final class PowerFactor {

    private PowerFactor() {}

    /**
     * Power factor of measured or predicted line figures.
     *
     * @param power mean power [W]
     * @param voltageRms rms voltage [V]
     * @param currentRms rms current [A]
     * @return power factor; negative when power flows back, as with a reversed probe [-]
     */
    public static double of(double power, double voltageRms, double currentRms) {
        Require.positive("rms voltage [V]", voltageRms);
        Require.positive("rms current [A]", currentRms);
        return power / (voltageRms * currentRms);
    }

    /**
     * Power factor from its two causes.
     *
     * @param thd total harmonic distortion of the current, over the fundamental [-]
     * @param displacementFactor cosine of the angle between voltage and fundamental current [-]
     * @return power factor [-]
     */
    public static double of(double thd, double displacementFactor) {
        Require.within("displacement factor [-]", displacementFactor, -1, 1);
        return distortionFactor(thd) * displacementFactor;
    }

    /**
     * Fundamental over total rms current, {@code 1 / sqrt(1 + THD^2)}.
     *
     * @param thd total harmonic distortion of the current, over the fundamental [-]
     * @return distortion factor [-]
     */
    public static double distortionFactor(double thd) {
        Require.notNegative("total harmonic distortion [-]", thd);
        return 1 / Math.sqrt(1 + thd * thd);
    }

    /**
     * Apparent power.
     *
     * @param power mean power [W]
     * @param powerFactor power factor, above 0 [-]
     * @return apparent power [VA]
     */
    public static double apparentPower(double power, double powerFactor) {
        Require.positive("power factor [-]", powerFactor);
        Require.within("power factor [-]", powerFactor, 0, 1);
        return power / powerFactor;
    }
}
