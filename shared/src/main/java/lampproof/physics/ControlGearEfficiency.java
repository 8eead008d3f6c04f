package lampproof.physics;

/**
 * Least full-load efficiency of separate LED control gear in the European Union.
 *
 * <p>{@code Pcg^0.81 / (1.09 Pcg^0.81 + 2.10)}, with the output power Pcg in watt.
 *
 * <p>Valid for separate control gear; for a driver inside a lamp it is a yardstick only.
 *
 * <p>Source: Commission Regulation (EU) 2019/2020, consolidated 1 March 2021, Annex II table 3.
 */
public final class ControlGearEfficiency {

    private static final String RULE = "(EU) 2019/2020 Annex II table 3, control gear efficiency";

    private ControlGearEfficiency() {}

    /**
     * Least efficiency.
     *
     * @param outputPower declared output power [W]
     * @return efficiency [-]
     */
    public static double floor(double outputPower) {
        Require.positive("output power [W]", outputPower);
        double scaled = Math.pow(outputPower, 0.81);
        return scaled / (1.09 * scaled + 2.10);
    }

    /** Verdict on an efficiency [-] at an output power [W]. */
    public static LimitVerdict judge(double outputPower, double efficiency) {
        return LimitVerdict.atLeast(RULE, efficiency, floor(outputPower));
    }
}
