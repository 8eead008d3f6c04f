package lampproof.physics;

/**
 * Output over input voltage of a step-up converter in either conduction mode.
 *
 * <p>Continuous {@code M = 1 / (1 - D)}; discontinuous {@code M = (1 + sqrt(1 + 4 D^2 / K)) / 2};
 * {@code Kcrit = D (1 - D)^2}; diode duty {@code D2 = (K / D) M}; into a current I:
 * {@code V = Vg (1 + D^2 Vg / (2 L I fs))}.
 *
 * <p>Valid in steady state. Neglects all losses and the output ripple.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 5, eq. (5.32),
 * (5.52), table 5.2.
 */
public final class BoostConversionRatio {

    private BoostConversionRatio() {}

    /**
     * Conversion ratio in the mode that the conduction parameter gives.
     *
     * @param duty share of the period with the switch on, below 1 [-]
     * @param parameter conduction parameter K [-]
     * @return output over input voltage [-]
     */
    public static double of(double duty, double parameter) {
        return parameter > criticalParameter(duty) ? continuous(duty) : discontinuous(duty, parameter);
    }

    /**
     * Conduction parameter below which conduction is discontinuous; at most 4/27, at a duty of 1/3.
     *
     * @param duty share of the period with the switch on [-]
     * @return critical conduction parameter [-]
     */
    public static double criticalParameter(double duty) {
        Require.within("duty [-]", duty, 0, 1);
        return duty * (1 - duty) * (1 - duty);
    }

    /**
     * Conversion ratio in continuous conduction.
     *
     * @param duty share of the period with the switch on, below 1 [-]
     * @return output over input voltage [-]
     */
    public static double continuous(double duty) {
        Require.notNegative("duty [-]", duty);
        Require.below("duty [-]", duty, "its upper end", 1);
        return 1 / (1 - duty);
    }

    /**
     * Conversion ratio in discontinuous conduction.
     *
     * @param duty share of the period with the switch on [-]
     * @param parameter conduction parameter K, above 0 and not above the critical one [-]
     * @return output over input voltage [-]
     */
    public static double discontinuous(double duty, double parameter) {
        Require.positive("conduction parameter [-]", parameter);
        Require.within("conduction parameter [-]", parameter, 0, criticalParameter(duty));
        return (1 + Math.sqrt(1 + 4 * duty * duty / parameter)) / 2;
    }

    /**
     * Share of the period in which the diode conducts, in discontinuous conduction.
     *
     * @param duty share of the period with the switch on [-]
     * @param parameter conduction parameter K, above 0 and not above the critical one [-]
     * @return diode duty [-]
     */
    public static double diodeDuty(double duty, double parameter) {
        return parameter / duty * discontinuous(duty, parameter);
    }

    /**
     * Output voltage in discontinuous conduction into a load that draws a given current.
     *
     * @param inputVoltage input voltage [V]
     * @param duty share of the period with the switch on [-]
     * @param inductance inductance [H]
     * @param frequency switching frequency [Hz]
     * @param outputCurrent mean output current, above 0 [A]
     * @return output voltage [V]
     */
    public static double discontinuousVoltage(
            double inputVoltage, double duty, double inductance, double frequency, double outputCurrent) {
        Require.positive("input voltage [V]", inputVoltage);
        Require.between("duty [-]", duty, 0, 1);
        Require.positive("inductance [H]", inductance);
        Require.positive("frequency [Hz]", frequency);
        Require.positive("output current [A]", outputCurrent);
        return inputVoltage * (1 + duty * duty * inputVoltage / (2 * inductance * outputCurrent * frequency));
    }
}
