package lampproof.physics;

/**
 * What a diode that recovers softly sends back once it is turned off hard.
 *
 * <p>Its stored charge, told as the current M that it belongs to, follows the current: {@code tau dM/dt = i - M}. Turned off
 * hard, the diode carries the reverse current {@code k M exp(-k t / T)}: a charge {@code q = T M}, a square
 * {@code k q M / 2}. T is the recovered charge over the current, and {@code tau = T (1 + k) / k}.
 *
 * <p>Valid where the current falls along a straight line and the switch closes in far less than T. A diode that is turned
 * off by a current that has come to zero keeps a charge in the order of {@code T^2 di/dt}, which is neglected.
 *
 * <p>Source: P. O. Lauritzen, C. L. Ma, A Simple Diode Model with Reverse Recovery, IEEE Trans. Power Electronics 6(2),
 * 1991 (from memory); the square and the heat derived.
 *
 * @param charge recovered charge q [C]
 * @param peak greatest reverse current k M [A]
 */
public record SoftRecovery(double charge, double peak) {

    /** Greatest reverse current over the current before turn-off, k; common practice for soft diodes, no source [-]. */
    public static final double SHARE = 0.5;

    /** A diode that stores nothing. */
    public static final SoftRecovery NONE = new SoftRecovery(0, 0);

    /**
     * After a straight ramp of current.
     *
     * @param from current at its beginning, when nothing is stored [A]
     * @param to current at its end [A]
     * @param conducted how long it takes [s]
     * @param time recovered charge over current T; 0 for a diode that stores nothing [s]
     */
    public static SoftRecovery after(double from, double to, double conducted, double time) {
        Require.notNegative("recovered charge over current [s]", time);
        if (time == 0 || !(conducted > 0)) {
            return NONE;
        }
        double lag = lifetime(time) * (from - to) / conducted;
        double stored = to + lag - (from + lag) * Math.exp(-conducted / lifetime(time));
        return new SoftRecovery(time * stored, SHARE * stored);
    }

    /**
     * Lifetime of the stored charge.
     *
     * @param time recovered charge over current T [s]
     * @return lifetime tau [s]
     */
    public static double lifetime(double time) {
        return time * (1 + SHARE) / SHARE;
    }

    /** Integral of the squared reverse current [A^2 s]. */
    public double square() {
        return 0.5 * charge * peak;
    }

    /** What the reverse current adds to the integral of a squared current that it meets in the switch [A^2 s]. */
    public double squareOver(double current) {
        return 2 * charge * current + square();
    }

    /**
     * Heat in the diode, whose voltage rises as fast as the node falls.
     *
     * @param voltage voltage of the node before the switch closes [V]
     * @param fallTime time constant with which it falls [s]
     * @param resistance resistance of the closed switch, through which both currents flow [Ohm]
     * @param current current that the switch takes over [A]
     * @return energy [J]
     */
    public double heat(double voltage, double fallTime, double resistance, double current) {
        if (charge == 0) {
            return 0;
        }
        double met = charge / (charge + peak * fallTime);
        return charge * (voltage * met - resistance * current) - resistance * square();
    }
}
