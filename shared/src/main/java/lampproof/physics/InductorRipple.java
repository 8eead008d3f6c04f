package lampproof.physics;

/**
 * Ripple of the inductor current in continuous conduction, and the inductance for a given ripple.
 *
 * <p>Step-down {@code dIpp = Vo (1 - Vo / Vg) / (L fs)}; step-up {@code dIpp = Vg (1 - Vg / Vo) / (L fs)}.
 *
 * <p>Valid in steady state. Neglects all drops.
 *
 * <p>Source: M. H. Rashid, Power Electronics: Devices, Circuits and Applications, 4th ed., ex. 5.5 and 5.6.
 */
public final class InductorRipple {

    private InductorRipple() {}

    /**
     * Ripple of a step-down converter.
     *
     * @param inputVoltage input voltage [V]
     * @param outputVoltage output voltage, not above the input voltage [V]
     * @param inductance inductance [H]
     * @param frequency switching frequency [Hz]
     * @return ripple, peak to peak [A]
     */
    public static double buck(double inputVoltage, double outputVoltage, double inductance, double frequency) {
        Require.positive("inductance [H]", inductance);
        Require.positive("frequency [Hz]", frequency);
        return voltSeconds(inputVoltage, outputVoltage) / (inductance * frequency);
    }

    /**
     * Ripple of a step-up converter.
     *
     * @param inputVoltage input voltage, not above the output voltage [V]
     * @param outputVoltage output voltage [V]
     * @param inductance inductance [H]
     * @param frequency switching frequency [Hz]
     * @return ripple, peak to peak [A]
     */
    public static double boost(double inputVoltage, double outputVoltage, double inductance, double frequency) {
        return buck(outputVoltage, inputVoltage, inductance, frequency);
    }

    /**
     * Inductance of a step-down converter.
     *
     * @param inputVoltage input voltage [V]
     * @param outputVoltage output voltage, not above the input voltage [V]
     * @param ripple ripple allowed, peak to peak [A]
     * @param frequency switching frequency [Hz]
     * @return inductance [H]
     */
    public static double buckInductance(double inputVoltage, double outputVoltage, double ripple, double frequency) {
        Require.positive("ripple [A]", ripple);
        return buck(inputVoltage, outputVoltage, 1, frequency) / ripple;
    }

    /**
     * Inductance of a step-up converter.
     *
     * @param inputVoltage input voltage, not above the output voltage [V]
     * @param outputVoltage output voltage [V]
     * @param ripple ripple allowed, peak to peak [A]
     * @param frequency switching frequency [Hz]
     * @return inductance [H]
     */
    public static double boostInductance(double inputVoltage, double outputVoltage, double ripple, double frequency) {
        return buckInductance(outputVoltage, inputVoltage, ripple, frequency);
    }

    /** Volt-seconds times frequency: the lower voltage is applied for one minus its share of the higher one [V]. */
    private static double voltSeconds(double higher, double lower) {
        Require.positive("higher voltage [V]", higher);
        Require.within("lower voltage [V]", lower, 0, higher);
        return lower * (1 - lower / higher);
    }
}
