package lampproof.physics;

/**
 * Integrals over half a line cycle of a sine that a step-up converter makes steeper towards the crest.
 *
 * <p>With {@code r = sqrt(1 - a^2)} and {@code A = pi/2 + atan(a/r)}:
 * {@code Y = int sin^2 / (1 - a sin) = -2/a - pi/a^2 + 2 A / (a^2 r)} and
 * {@code X = int sin^2 / (1 - a sin)^2 = 2 / (a (1 - a^2)) + pi/a^2 + 2 (2 a^2 - 1) A / (a^2 (1 - a^2) r)}, from 0 to
 * pi.
 *
 * <p>Valid for a from 0.001 to below 1; below, rounding spoils the closed forms.
 *
 * <p>Source: own integration of R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, eq.
 * (21.31).
 */
final class PeakedSineIntegral {

    private PeakedSineIntegral() {}

    /** Integral of sin^2 / (1 - a sin) [-], of a steepness a [-]. */
    static double first(double steepness) {
        double a = checked(steepness);
        double r = Math.sqrt(1 - a * a);
        return -2 / a - Math.PI / (a * a) + 2 * angle(a, r) / (a * a * r);
    }

    /** Integral of sin^2 / (1 - a sin)^2 [-], of a steepness a [-]. */
    static double second(double steepness) {
        double a = checked(steepness);
        double r = Math.sqrt(1 - a * a);
        double rest = 1 - a * a;
        return 2 / (a * rest) + Math.PI / (a * a) + 2 * (2 * a * a - 1) * angle(a, r) / (a * a * rest * r);
    }

    private static double angle(double a, double r) {
        return Math.PI / 2 + Math.atan(a / r);
    }

    private static double checked(double steepness) {
        Require.within("steepness [-]", steepness, 0.001, 1);
        Require.below("steepness [-]", steepness, "its upper end", 1);
        return steepness;
    }
}
