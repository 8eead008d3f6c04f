package lampproof.physics;

/**
 * Ripple of a storage capacitor that is fed with sin-squared power and loaded with constant power.
 *
 * <p>{@code dVpp = Vrms (sqrt(1 + P / (w C Vrms^2)) - sqrt(1 - P / (w C Vrms^2)))}, about {@code P / (w C Vrms)}, with
 * the angular frequency w of the line.
 *
 * <p>Valid for unity power factor and a constant-power load. Neglects the switching ripple and the resistance of the
 * capacitor.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.4,
 * eq. (21.88)-(21.94).
 */
public final class TwiceLineRipple {

    private TwiceLineRipple() {}

    /**
     * Peak-to-peak ripple without approximation.
     *
     * @param power load power [W]
     * @param capacitance storage capacitance [F]
     * @param voltageRms rms voltage of the capacitor [V]
     * @param lineFrequency line frequency [Hz]
     * @return ripple, peak to peak [V]
     */
    public static double exact(double power, double capacitance, double voltageRms, double lineFrequency) {
        double swing = approximate(power, capacitance, voltageRms, lineFrequency) / voltageRms;
        Require.within("stored energy swing P/(w C V^2) [-]", swing, 0, 1);
        return voltageRms * (Math.sqrt(1 + swing) - Math.sqrt(1 - swing));
    }

    /**
     * Peak-to-peak ripple for small ripple.
     *
     * @param power load power [W]
     * @param capacitance storage capacitance [F]
     * @param voltageRms rms voltage of the capacitor [V]
     * @param lineFrequency line frequency [Hz]
     * @return ripple, peak to peak [V]
     */
    public static double approximate(double power, double capacitance, double voltageRms, double lineFrequency) {
        Require.notNegative("power [W]", power);
        Require.positive("capacitance [F]", capacitance);
        Require.positive("rms voltage [V]", voltageRms);
        Require.positive("line frequency [Hz]", lineFrequency);
        return power / (2 * Math.PI * lineFrequency * capacitance * voltageRms);
    }

    /**
     * Capacitance that keeps the small ripple at a given value.
     *
     * @param power load power [W]
     * @param voltageRms rms voltage of the capacitor [V]
     * @param ripple ripple allowed, peak to peak [V]
     * @param lineFrequency line frequency [Hz]
     * @return capacitance [F]
     */
    public static double capacitance(double power, double voltageRms, double ripple, double lineFrequency) {
        Require.positive("ripple [V]", ripple);
        return approximate(power, 1, voltageRms, lineFrequency) / ripple;
    }
}
