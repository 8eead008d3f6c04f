package lampproof.physics;

/**
 * Switching-frequency ripple of an output capacitor in continuous conduction.
 *
 * <p>Step-down {@code dVpp = dIpp / (8 fs C)}; step-up {@code dVpp = Io D / (fs C)}; resistance {@code ESR I}.
 *
 * <p>Valid for a ripple much smaller than the output voltage and a load that draws a constant current.
 *
 * <p>Source: M. H. Rashid, Power Electronics: Devices, Circuits and Applications, 4th ed., ex. 5.5 and 5.6;
 * S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.19.
 */
public final class OutputCapacitorRipple {

    private OutputCapacitorRipple() {}

    /**
     * Voltage ripple of a step-down converter.
     *
     * @param inductorRipple inductor ripple, peak to peak [A]
     * @param capacitance output capacitance [F]
     * @param frequency switching frequency [Hz]
     * @return voltage ripple, peak to peak [V]
     */
    public static double buck(double inductorRipple, double capacitance, double frequency) {
        Require.notNegative("inductor ripple [A]", inductorRipple);
        Require.positive("capacitance [F]", capacitance);
        Require.positive("frequency [Hz]", frequency);
        return inductorRipple / (8 * frequency * capacitance);
    }

    /**
     * Voltage ripple of a step-up converter.
     *
     * @param outputCurrent load current [A]
     * @param duty share of the period with the switch on [-]
     * @param capacitance output capacitance [F]
     * @param frequency switching frequency [Hz]
     * @return voltage ripple, peak to peak [V]
     */
    public static double boost(double outputCurrent, double duty, double capacitance, double frequency) {
        Require.notNegative("output current [A]", outputCurrent);
        Require.within("duty [-]", duty, 0, 1);
        Require.positive("capacitance [F]", capacitance);
        Require.positive("frequency [Hz]", frequency);
        return outputCurrent * duty / (frequency * capacitance);
    }

    /**
     * Series resistance that spends a given ripple.
     *
     * @param resistiveRipple voltage ripple left for the resistance, peak to peak [V]
     * @param currentStep step of the capacitor current, peak to peak [A]
     * @return largest series resistance [Ohm]
     */
    public static double largestResistance(double resistiveRipple, double currentStep) {
        Require.notNegative("voltage ripple [V]", resistiveRipple);
        Require.positive("current step [A]", currentStep);
        return resistiveRipple / currentStep;
    }
}
