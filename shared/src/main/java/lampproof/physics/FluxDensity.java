package lampproof.physics;

/**
 * Flux density of a gapped inductor, and the turns for a given one.
 *
 * <p>{@code B = L I / (N Ac)}; {@code N = L I / (B Ac)}; alternating part {@code Bac = V t / (2 N Ac)}.
 *
 * <p>Valid below saturation. Neglects the narrowing of the flux path by corners and fringing at the gap.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4,
 * eq. (11.58)-(11.88); Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4.
 */
public final class FluxDensity {

    private FluxDensity() {}

    /**
     * Peak flux density.
     *
     * @param inductance inductance [H]
     * @param peakCurrent peak current [A]
     * @param turns turns [-]
     * @param area core area [m2]
     * @return flux density [T]
     */
    public static double peak(double inductance, double peakCurrent, double turns, double area) {
        Require.positive("inductance [H]", inductance);
        Require.notNegative("peak current [A]", peakCurrent);
        Require.positive("turns [-]", turns);
        Require.positive("core area [m2]", area);
        return peakCurrent * inductance / (area * turns);
    }

    /**
     * Turns that keep the peak flux density at a given value, before rounding up.
     *
     * @param inductance inductance [H]
     * @param peakCurrent peak current [A]
     * @param fluxDensity flux density allowed [T]
     * @param area core area [m2]
     * @return turns [-]
     */
    public static double turns(double inductance, double peakCurrent, double fluxDensity, double area) {
        Require.positive("flux density [T]", fluxDensity);
        return peak(inductance, peakCurrent, 1, area) / fluxDensity;
    }

    /**
     * Amplitude of the alternating flux density, half of its swing.
     *
     * @param voltage voltage across the winding [V]
     * @param time time for which it lasts [s]
     * @param turns turns [-]
     * @param area core area [m2]
     * @return amplitude [T]
     */
    public static double alternating(double voltage, double time, double turns, double area) {
        Require.notNegative("voltage [V]", voltage);
        Require.notNegative("time [s]", time);
        Require.positive("turns [-]", turns);
        Require.positive("core area [m2]", area);
        return voltage * time / (2 * turns * area);
    }
}
