package lampproof.physics;

/**
 * Output over input voltage of a step-down converter in either conduction mode.
 *
 * <p>Continuous {@code M = D}; discontinuous {@code M = 2 / (1 + sqrt(1 + 4 K / D^2))}; {@code Kcrit = 1 - D}; diode
 * duty {@code D2 = K / (D M)}; into a current I: {@code V = Vg / (1 + 2 L I fs / (D^2 Vg))}.
 *
 * <p>Valid in steady state. Neglects all losses and the output ripple.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 5, eq. (5.5),
 * (5.28), table 5.2.
 */
public final class BuckConversionRatio {

    private BuckConversionRatio() {}

    /**
     * Conversion ratio in the mode that the conduction parameter gives.
     *
     * @param duty share of the period with the switch on [-]
     * @param parameter conduction parameter K [-]
     * @return output over input voltage [-]
     */
    public static double of(double duty, double parameter) {
        return parameter > criticalParameter(duty) ? duty : discontinuous(duty, parameter);
    }

    /**
     * Conduction parameter below which conduction is discontinuous.
     *
     * @param duty share of the period with the switch on [-]
     * @return critical conduction parameter [-]
     */
    public static double criticalParameter(double duty) {
        Require.within("duty [-]", duty, 0, 1);
        return 1 - duty;
    }

    /**
     * Conversion ratio in discontinuous conduction.
     *
     * @param duty share of the period with the switch on [-]
     * @param parameter conduction parameter K, not above the critical one [-]
     * @return output over input voltage [-]
     */
    public static double discontinuous(double duty, double parameter) {
        Require.within("conduction parameter [-]", parameter, 0, criticalParameter(duty));
        return 2 / (1 + Math.sqrt(1 + 4 * parameter / (duty * duty)));
    }

    /**
     * Share of the period in which the diode conducts, in discontinuous conduction.
     *
     * @param duty share of the period with the switch on [-]
     * @param parameter conduction parameter K, not above the critical one [-]
     * @return diode duty [-]
     */
    public static double diodeDuty(double duty, double parameter) {
        return parameter / (duty * discontinuous(duty, parameter));
    }

    /**
     * Output voltage in discontinuous conduction into a load that draws a given current.
     *
     * @param inputVoltage input voltage [V]
     * @param duty share of the period with the switch on [-]
     * @param inductance inductance [H]
     * @param frequency switching frequency [Hz]
     * @param outputCurrent mean output current [A]
     * @return output voltage [V]
     */
    public static double discontinuousVoltage(
            double inputVoltage, double duty, double inductance, double frequency, double outputCurrent) {
        Require.positive("input voltage [V]", inputVoltage);
        Require.between("duty [-]", duty, 0, 1);
        Require.positive("inductance [H]", inductance);
        Require.positive("frequency [Hz]", frequency);
        Require.notNegative("output current [A]", outputCurrent);
        return inputVoltage / (1 + 2 * inductance * outputCurrent * frequency / (duty * duty * inputVoltage));
    }
}
