package lampproof.physics;

/**
 * Least displacement factor of mains LED light sources in the European Union.
 *
 * <p>No limit up to 5 W; 0.5 above 5 W to 10 W; 0.7 above 10 W to 25 W; 0.9 above 25 W.
 *
 * <p>Valid at full load. It is the displacement factor: a distorted current in phase with the voltage passes.
 *
 * <p>Source: Commission Regulation (EU) 2019/2020, consolidated 1 March 2021, Annex II table 4, Annex I (57).
 */
public final class DisplacementFactorFloor {

    private static final String RULE = "(EU) 2019/2020 Annex II table 4, displacement factor";

    private DisplacementFactorFloor() {}

    /**
     * Least displacement factor.
     *
     * @param power on-mode power [W]
     * @return floor, 0 where there is no limit [-]
     */
    public static double of(double power) {
        Require.notNegative("power [W]", power);
        if (power <= 5) {
            return 0;
        }
        if (power <= 10) {
            return 0.5;
        }
        return power <= 25 ? 0.7 : 0.9;
    }

    /** Verdict on a displacement factor [-] at an on-mode power [W]. */
    public static LimitVerdict judge(double power, double displacementFactor) {
        return LimitVerdict.atLeast(RULE, displacementFactor, of(power));
    }
}
