package lampproof.physics;

/**
 * Air gap of an inductor that reaches a given flux density at its peak current.
 *
 * <p>{@code lg = mu0 L Imax^2 / (Bmax^2 Ac)}.
 *
 * <p>Valid when the gap holds nearly all of the reluctance. Neglects fringing, which asks for a longer gap, and the
 * core.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4.1.
 */
public final class AirGap {

    private AirGap() {}

    /**
     * Total length of the gap.
     *
     * @param inductance inductance [H]
     * @param peakCurrent peak current [A]
     * @param fluxDensity flux density at the peak current [T]
     * @param area core area [m2]
     * @return gap [m]
     */
    public static double length(double inductance, double peakCurrent, double fluxDensity, double area) {
        Require.positive("inductance [H]", inductance);
        Require.positive("peak current [A]", peakCurrent);
        Require.positive("flux density [T]", fluxDensity);
        Require.positive("core area [m2]", area);
        return PhysicalConstants.VACUUM_PERMEABILITY
                * inductance
                * peakCurrent
                * peakCurrent
                / (fluxDensity * fluxDensity * area);
    }
}
