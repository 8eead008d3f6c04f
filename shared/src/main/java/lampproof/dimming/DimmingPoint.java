package lampproof.dimming;

import lampproof.quasistatic.dimmed.DimmedStress;

/**
 * The lamp at one setting of its dimmer.
 *
 * @param conduction angle of each half cycle that the dimmer lets through [rad]
 * @param stress what the half cycles show
 * @param swing greatest less least mean string current of the half cycles that take turns [A]; zero when all are alike
 */
public record DimmingPoint(double conduction, DimmedStress stress, double swing) {

    private static final double LEAST_CURRENT = 1e-9;

    /** The same in degrees [deg]. */
    public double degrees() {
        return Math.toDegrees(conduction);
    }

    /** Mean string current [A]; less than a nanoampere is what the sums have lost in rounding. */
    public double current() {
        return stress.stringCurrent() < LEAST_CURRENT ? 0 : stress.stringCurrent();
    }
}
