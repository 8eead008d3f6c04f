package lampproof.physics;

/**
 * Visibility of the stroboscopic effect of modulated light.
 *
 * <p>{@code SVM = (sum (Cm / T(m f))^3.7)^(1/3.7)}; {@code T = 1 / (1 + exp(-0.00518 (f - 306.6))) + 20 exp(-f / 10)};
 * harmonics up to 2 kHz.
 *
 * <p>Valid for periodic light above 80 Hz; 1 is the threshold of visibility.
 *
 * <p>Source: CIE TN 006:2016 and IEC TR 63158, constants from memory; limit: Commission Regulation (EU) 2019/2020,
 * Annex II table 4.
 */
public final class StroboscopicVisibility {

    /** Largest visibility of mains LED light sources at full load in the European Union [-]. */
    public static final double LIMIT = 0.4;

    private static final String RULE = "(EU) 2019/2020 Annex II table 4, SVM";
    private static final double HIGHEST_FREQUENCY = 2000;
    private static final double NORM = 3.7;

    private StroboscopicVisibility() {}

    /**
     * Depth of a sine that is just visible.
     *
     * @param frequency frequency [Hz]
     * @return amplitude over mean at the threshold [-]
     */
    public static double threshold(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        return 1 / (1 + Math.exp(-0.00518 * (frequency - 306.6))) + 20 * Math.exp(-frequency / 10);
    }

    /**
     * Visibility of light with given harmonics.
     *
     * @param frequency fundamental frequency of the light, twice the line frequency for a lamp [Hz]
     * @param amplitudes amplitude over mean of the first, second and further harmonics [-]
     * @return stroboscopic visibility measure [-]
     */
    public static double of(double frequency, double... amplitudes) {
        double sum = 0;
        for (int m = 1; m <= amplitudes.length && m * frequency <= HIGHEST_FREQUENCY; m++) {
            sum += Math.pow(amplitudes[m - 1] / threshold(m * frequency), NORM);
        }
        return Math.pow(sum, 1 / NORM);
    }

    /** Verdict on a visibility [-]. */
    public static LimitVerdict judge(double visibility) {
        return LimitVerdict.atMost(RULE, visibility, LIMIT);
    }
}
