package lampproof.physics;

/**
 * Circuit whose open voltage is the impulse of 1.2/50 us and whose shorted current is the impulse of 8/20 us.
 *
 * <p>A charged capacitor C with a resistor R1 across it discharges through L and R2 into the output, with R3
 * across it. The open peak is the charging voltage over 1.082, the shorted peak that voltage over 2 Ohm.
 *
 * <p>Valid within the tolerances of the standard: front 1.2 us within 30 per cent, 50 us within 20 per cent, front 8 us
 * and 20 us within 20 per cent.
 *
 * <p>Source: waves and 2 Ohm IEC 61000-4-5; elements after B. Hesterman, D. Powell, Simulation of Surge Generators
 * (from memory); the test measures the waves that they make.
 */
public final class CombinationWaveGenerator {

    /** Capacitor [F]. */
    public static final double CAPACITANCE = 6.038e-6;

    /** Inductor [H]. */
    public static final double INDUCTANCE = 10.37e-6;

    /** Resistor across the capacitor [Ohm]. */
    public static final double DISCHARGE_RESISTANCE = 25.105;

    /** Resistor in series [Ohm]. */
    public static final double SERIES_RESISTANCE = 0.941;

    /** Resistor across the output [Ohm]. */
    public static final double OUTPUT_RESISTANCE = 19.80;

    /** Capacitor between the generator and the mains [F]. */
    public static final double COUPLING_CAPACITANCE = 18e-6;

    /** Choke that keeps the surge from the mains [H]. */
    public static final double DECOUPLING_INDUCTANCE = 1.5e-3;

    private static final double CHARGE = 1.082;

    private CombinationWaveGenerator() {}

    /** Voltage to which the capacitor is charged [V] for an open peak [V]. */
    public static double chargingVoltage(double peak) {
        Require.positive("peak [V]", peak);
        return CHARGE * peak;
    }
}
