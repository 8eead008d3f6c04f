package lampproof.physics;

/**
 * Heat of a bleeder that draws a constant current whenever the dimmer conducts.
 *
 * <p>{@code P = I VM (1 + cos alpha) / pi}.
 *
 * <p>Valid for a removed angle from 0 to pi, alike for leading and trailing edge; the worst case is full conduction.
 *
 * <p>Source: mean of the rectified line, common practice, no source.
 */
public final class BleederHeat {

    private BleederHeat() {}

    /**
     * Mean heat.
     *
     * @param current bleeder current [A]
     * @param linePeak crest of the line voltage [V]
     * @param removedAngle angle removed from each half cycle [rad]
     * @return heat [W]
     */
    public static double power(double current, double linePeak, double removedAngle) {
        Require.notNegative("bleeder current [A]", current);
        return current * PhaseCut.rectifiedMean(linePeak, removedAngle);
    }
}
