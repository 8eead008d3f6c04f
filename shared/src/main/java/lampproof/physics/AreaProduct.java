package lampproof.physics;

/**
 * Size of core that an inductor needs for a given current density.
 *
 * <p>{@code Ap = L Ipk Irms / (Bmax J Ku)}, core area times window area.
 *
 * <p>Valid for one winding that fills the window. Neglects skin and proximity effects and core loss.
 *
 * <p>Source: balance of saturation and window, common practice, no source.
 */
public final class AreaProduct {

    private AreaProduct() {}

    /**
     * Least area product.
     *
     * @param inductance inductance [H]
     * @param peakCurrent peak current [A]
     * @param rmsCurrent rms current [A]
     * @param fluxDensity peak flux density allowed [T]
     * @param currentDensity rms current density allowed in the wire [A/m2]
     * @param fill share of the window that is copper [-]
     * @return area product [m4]
     */
    public static double required(
            double inductance,
            double peakCurrent,
            double rmsCurrent,
            double fluxDensity,
            double currentDensity,
            double fill) {
        Require.positive("inductance [H]", inductance);
        Require.notNegative("peak current [A]", peakCurrent);
        Require.notNegative("rms current [A]", rmsCurrent);
        Require.positive("flux density [T]", fluxDensity);
        Require.positive("current density [A/m2]", currentDensity);
        Require.between("fill [-]", fill, 0, 1);
        return inductance * peakCurrent * rmsCurrent / (fluxDensity * currentDensity * fill);
    }
}
