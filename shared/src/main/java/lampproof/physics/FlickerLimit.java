package lampproof.physics;

/**
 * Depth of modulation that health considerations allow at a frequency.
 *
 * <p>Low risk: 0.025 % x f below 90 Hz, 0.08 % x f up to 1250 Hz. No observable effect: 0.01 % x f below 90 Hz,
 * (1/30) % x f up to 3000 Hz. Seizure: 5 % below 90 Hz. With f in hertz; free above.
 *
 * <p>Valid for one dominant frequency.
 *
 * <p>Source: IEEE Std 1789-2015, clause 8.1.1, practices 1 to 3, read in documents that quote it.
 */
public final class FlickerLimit {

    private static final double SLOW = 90;
    private static final String LOW_RISK = "IEEE 1789-2015 practice 1, low risk";
    private static final String NO_EFFECT = "IEEE 1789-2015 practice 2, no observable effect";

    private FlickerLimit() {}

    /**
     * Depth of low risk.
     *
     * @param frequency frequency of the modulation [Hz]
     * @return depth allowed, 1 where anything goes [-]
     */
    public static double lowRisk(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        return Math.min(1, (frequency < SLOW ? 0.00025 : 0.0008) * frequency);
    }

    /**
     * Depth without observable effect.
     *
     * @param frequency frequency of the modulation [Hz]
     * @return depth allowed, 1 where anything goes [-]
     */
    public static double noEffect(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        return Math.min(1, frequency < SLOW ? 0.0001 * frequency : frequency / 3000);
    }

    /**
     * Depth against seizures.
     *
     * @param frequency frequency of the modulation [Hz]
     * @return depth allowed, 1 where anything goes [-]
     */
    public static double seizure(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        return frequency < SLOW ? 0.05 : 1;
    }

    /** Verdict of low risk on a depth [-] at a frequency [Hz]. */
    public static LimitVerdict judgeLowRisk(double frequency, double depth) {
        return LimitVerdict.atMost(LOW_RISK, depth, lowRisk(frequency));
    }

    /** Verdict of no observable effect on a depth [-] at a frequency [Hz]. */
    public static LimitVerdict judgeNoEffect(double frequency, double depth) {
        return LimitVerdict.atMost(NO_EFFECT, depth, noEffect(frequency));
    }
}
