package lampproof.physics;

/**
 * Largest on-mode power of non-directional mains LED light sources in the European Union.
 *
 * <p>{@code C (L + flux / (F eta)) R}, with {@code C = 1.08}, {@code L = 1.5 W}, {@code F = 1}, {@code eta = 120 lm/W},
 * {@code R = (CRI + 80) / 160}.
 *
 * <p>Valid for a colour rendering index above 25 and no further correction factors.
 *
 * <p>Source: Commission Regulation (EU) 2019/2020, consolidated 1 March 2021, Annex II tables 1-2.
 */
public final class OnModePowerLimit {

    private static final String RULE = "(EU) 2019/2020 Annex II table 1, on-mode power";

    private OnModePowerLimit() {}

    /**
     * Largest power.
     *
     * @param flux useful luminous flux [lm]
     * @param colourRendering colour rendering index, above 25 [-]
     * @return power [W]
     */
    public static double of(double flux, double colourRendering) {
        Require.positive("flux [lm]", flux);
        Require.between("colour rendering index [-]", colourRendering, 25, 100.001);
        return 1.08 * (1.5 + flux / 120) * (colourRendering + 80) / 160;
    }

    /** Verdict on an on-mode power [W] at a flux [lm] and a colour rendering index [-]. */
    public static LimitVerdict judge(double flux, double colourRendering, double power) {
        return LimitVerdict.atMost(RULE, power, of(flux, colourRendering));
    }
}
