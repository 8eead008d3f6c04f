package lampproof.physics;

/**
 * Displacement that a capacitor across the line adds to a load which draws its current in phase.
 *
 * <p>{@code cos phi = cos(atan(2 pi f C Vac^2 / P))}; {@code C <= P tan(acos DF) / (2 pi f Vac^2)};
 * {@code I = 2 pi f C Vac}.
 *
 * <p>Valid for a fundamental current in phase with the voltage. Neglects inductance and the capacitor behind the bridge
 * unless it is added to C.
 *
 * <p>Source: Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4.
 */
public final class LineCapacitor {

    private LineCapacitor() {}

    /**
     * Current of the capacitor alone, as it flows through a dimmer that is off.
     *
     * @param capacitance capacitance [F]
     * @param lineRms rms line voltage [V]
     * @param lineFrequency line frequency [Hz]
     * @return rms current [A]
     */
    public static double current(double capacitance, double lineRms, double lineFrequency) {
        Require.notNegative("capacitance [F]", capacitance);
        Require.positive("line rms [V]", lineRms);
        Require.positive("line frequency [Hz]", lineFrequency);
        return 2 * Math.PI * lineFrequency * capacitance * lineRms;
    }

    /**
     * Displacement factor of load and capacitor.
     *
     * @param inputPower mean power from the line [W]
     * @param capacitance capacitance [F]
     * @param lineRms rms line voltage [V]
     * @param lineFrequency line frequency [Hz]
     * @return displacement factor [-]
     */
    public static double displacementFactor(
            double inputPower, double capacitance, double lineRms, double lineFrequency) {
        Require.positive("input power [W]", inputPower);
        return Math.cos(Math.atan(current(capacitance, lineRms, lineFrequency) * lineRms / inputPower));
    }

    /**
     * Largest capacitance that leaves a given displacement factor.
     *
     * @param inputPower mean power from the line [W]
     * @param displacementFactor displacement factor to keep, above 0 [-]
     * @param lineRms rms line voltage [V]
     * @param lineFrequency line frequency [Hz]
     * @return capacitance [F]
     */
    public static double largest(double inputPower, double displacementFactor, double lineRms, double lineFrequency) {
        Require.positive("input power [W]", inputPower);
        Require.positive("displacement factor [-]", displacementFactor);
        Require.within("displacement factor [-]", displacementFactor, 0, 1);
        return inputPower * Math.tan(Math.acos(displacementFactor)) / (current(1, lineRms, lineFrequency) * lineRms);
    }
}
