package lampproof.physics;

/**
 * Voltage impulse of 1.2/50 us that tests a mains port.
 *
 * <p>{@code V = 1.037 Vp (1 - exp(-t / 0.4074 us)) exp(-t / 68.22 us)}.
 *
 * <p>Valid for an open generator.
 *
 * <p>Source: IEEE C62.45 and IEC 61000-4-5, constants from memory; they reproduce 1.2 us and 50 us.
 */
public final class VoltageImpulse {

    private VoltageImpulse() {}

    /**
     * Voltage at a time.
     *
     * @param peak peak voltage [V]
     * @param time time after the start [s]
     * @return voltage [V]
     */
    public static double voltage(double peak, double time) {
        Require.notNegative("time [s]", time);
        return 1.037 * peak * (1 - Math.exp(-time / 0.4074e-6)) * Math.exp(-time / 68.22e-6);
    }
}
