package lampproof.physics;

/**
 * Stability of peak-current control against oscillation at half the switching frequency.
 *
 * <p>{@code alpha = -(m2 - ma) / (m1 + ma)}: a disturbance of the inductor current is alpha times itself one period
 * later; stable while {@code |alpha| < 1}; without ramp that is {@code D < 0.5}.
 *
 * <p>Valid for continuous conduction at fixed frequency. Boundary, discontinuous and fixed-off-time operation are
 * stable without a ramp.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 2nd ed., 2001, sect. 12.1; in the 3rd
 * ed., 2020, the chapter on current-programmed control (place from memory).
 */
public final class SubharmonicStability {

    private SubharmonicStability() {}

    /**
     * Growth of a disturbance over one period.
     *
     * @param onSlope rise of the inductor current while the switch is on, m1 [A/s]
     * @param offSlope fall of the inductor current while the switch is off, m2 as a positive number [A/s]
     * @param rampSlope slope of the compensation ramp, ma [A/s]
     * @return disturbance one period later over the disturbance now [-]
     */
    public static double growth(double onSlope, double offSlope, double rampSlope) {
        Require.positive("on slope [A/s]", onSlope);
        Require.notNegative("off slope [A/s]", offSlope);
        Require.notNegative("ramp slope [A/s]", rampSlope);
        return -(offSlope - rampSlope) / (onSlope + rampSlope);
    }

    /**
     * Whether a disturbance dies out.
     *
     * @param onSlope rise of the inductor current while the switch is on, m1 [A/s]
     * @param offSlope fall of the inductor current while the switch is off, m2 as a positive number [A/s]
     * @param rampSlope slope of the compensation ramp, ma [A/s]
     * @return true when the control is stable
     */
    public static boolean isStable(double onSlope, double offSlope, double rampSlope) {
        return Math.abs(growth(onSlope, offSlope, rampSlope)) < 1;
    }

    /**
     * Ramp at the edge of stability.
     *
     * @param onSlope rise of the inductor current while the switch is on, m1 [A/s]
     * @param offSlope fall of the inductor current while the switch is off, m2 as a positive number [A/s]
     * @return slope that the ramp must exceed, 0 when no ramp is needed [A/s]
     */
    public static double leastRamp(double onSlope, double offSlope) {
        Require.positive("on slope [A/s]", onSlope);
        Require.notNegative("off slope [A/s]", offSlope);
        return Math.max(0, (offSlope - onSlope) / 2);
    }
}
