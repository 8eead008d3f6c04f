package lampproof.physics;

/**
 * Time that a thyristor needs its gate until an inductive load lets it latch.
 *
 * <p>{@code t = -(L / R) ln(1 - IL R / V)}.
 *
 * <p>Valid for a voltage that is constant over this time.
 *
 * <p>Source: B. R. Gupta, V. Singhal, Power Electronics, ex. 2.6.
 */
public final class LatchingTime {

    private LatchingTime() {}

    /**
     * Least gate pulse.
     *
     * @param voltage voltage across the load [V]
     * @param resistance load resistance [Ohm]
     * @param inductance load inductance [H]
     * @param latchingCurrent latching current, below the final current [A]
     * @return time [s]
     */
    public static double of(double voltage, double resistance, double inductance, double latchingCurrent) {
        Require.positive("resistance [Ohm]", resistance);
        Require.notNegative("inductance [H]", inductance);
        Require.notNegative("latching current [A]", latchingCurrent);
        Require.below("latching current [A]", latchingCurrent, "final current [A]", voltage / resistance);
        return -inductance / resistance * Math.log(1 - latchingCurrent * resistance / voltage);
    }
}
