package lampproof.physics;

/**
 * Size of core that an inductor needs for a given copper loss.
 *
 * <p>{@code Kg >= rho L^2 Itot^2 Imax^2 / (Bmax^2 Pcu Ku)}.
 *
 * <p>Valid when copper loss and saturation, not core loss, set the size. Neglects skin and proximity effects.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4.1,
 * eq. (11.58)-(11.75).
 *
 * @param inductance inductance [H]
 * @param rmsCurrent sum of the rms currents of all windings, referred to the first [A]
 * @param peakCurrent peak magnetizing current [A]
 * @param fluxDensity peak flux density allowed [T]
 * @param copperLoss copper loss allowed [W]
 * @param fill share of the window that is copper [-]
 */
public record CoreGeometricalConstant(
        double inductance, double rmsCurrent, double peakCurrent, double fluxDensity, double copperLoss, double fill) {

    /** Checks the range of the formula. */
    public CoreGeometricalConstant {
        Require.positive("inductance [H]", inductance);
        Require.positive("rms current [A]", rmsCurrent);
        Require.positive("peak current [A]", peakCurrent);
        Require.positive("flux density [T]", fluxDensity);
        Require.positive("copper loss [W]", copperLoss);
        Require.between("fill [-]", fill, 0, 1);
    }

    /** Least geometrical constant [m5] with copper of a resistivity [Ohm m]. */
    public double required(double resistivity) {
        Require.positive("resistivity [Ohm m]", resistivity);
        double numerator = resistivity * square(inductance) * square(rmsCurrent) * square(peakCurrent);
        return numerator / (square(fluxDensity) * copperLoss * fill);
    }

    private static double square(double value) {
        return value * value;
    }
}
