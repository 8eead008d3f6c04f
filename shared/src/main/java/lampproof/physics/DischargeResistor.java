package lampproof.physics;

/**
 * Resistor that discharges a line capacitor after unplugging.
 *
 * <p>{@code R <= t / (C ln(V0 / Vlim))}.
 *
 * <p>Valid when nothing else discharges the capacitor; a load only helps.
 *
 * <p>Source: exponential discharge; rules of the trade: below 34 V after 1 s for more than 0.1 uF, or below 60 V
 * after 1 s at exposed pins (IEC 60204-1), both read in documents that quote the standards.
 */
public final class DischargeResistor {

    private DischargeResistor() {}

    /**
     * Largest resistance that discharges in time.
     *
     * @param capacitance capacitance [F]
     * @param startVoltage voltage at unplugging, the line peak [V]
     * @param endVoltage voltage allowed at the end, below the start [V]
     * @param time time allowed [s]
     * @return resistance [Ohm]
     */
    public static double largest(double capacitance, double startVoltage, double endVoltage, double time) {
        Require.positive("capacitance [F]", capacitance);
        Require.positive("time [s]", time);
        Require.positive("end voltage [V]", endVoltage);
        Require.below("end voltage [V]", endVoltage, "start voltage [V]", startVoltage);
        return time / (capacitance * Math.log(startVoltage / endVoltage));
    }
}
