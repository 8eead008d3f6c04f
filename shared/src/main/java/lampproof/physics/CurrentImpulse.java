package lampproof.physics;

/**
 * Current impulse of 8/20 us that tests a mains port.
 *
 * <p>{@code I = 0.01243 Ip (t / us)^3 exp(-t / 3.911 us)}.
 *
 * <p>Valid for a shorted generator.
 *
 * <p>Source: IEEE C62.45 and IEC 61000-4-5, constants from memory; they reproduce 8 us and 20 us.
 */
public final class CurrentImpulse {

    private CurrentImpulse() {}

    /**
     * Current at a time.
     *
     * @param peak peak current [A]
     * @param time time after the start [s]
     * @return current [A]
     */
    public static double current(double peak, double time) {
        Require.notNegative("time [s]", time);
        double microseconds = time / 1e-6;
        return 0.01243 * peak * Math.pow(microseconds, 3) * Math.exp(-microseconds / 3.911);
    }
}
