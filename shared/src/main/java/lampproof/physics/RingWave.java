package lampproof.physics;

/**
 * Ring wave of 100 kHz that tests a mains port.
 *
 * <p>{@code V = 1.590 Vp (1 - exp(-t / 0.533 us)) exp(-t / 9.788 us) cos(2 pi 100 kHz t)}.
 *
 * <p>Valid for an open generator: rise 0.5 us, each further extreme 60 % of the one before.
 *
 * <p>Source: IEEE C62.41.2-2002 and C62.45, constants from memory; they reproduce the nominal rise and decay.
 */
public final class RingWave {

    /** Amplitude over the peak of the wave [-]. */
    public static final double AMPLITUDE = 1.590;

    /** Time constant of the front [s]. */
    public static final double FRONT = 0.533e-6;

    /** Time constant of the decay [s]. */
    public static final double DECAY = 9.788e-6;

    /** Frequency of the ring [Hz]. */
    public static final double FREQUENCY = 100e3;

    private RingWave() {}

    /**
     * Voltage at a time.
     *
     * @param peak peak voltage [V]
     * @param time time after the start [s]
     * @return voltage [V]
     */
    public static double voltage(double peak, double time) {
        Require.notNegative("time [s]", time);
        return AMPLITUDE
                * peak
                * (1 - Math.exp(-time / FRONT))
                * Math.exp(-time / DECAY)
                * Math.cos(2 * Math.PI * FREQUENCY * time);
    }
}
