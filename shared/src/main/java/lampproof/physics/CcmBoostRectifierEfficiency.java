package lampproof.physics;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Efficiency of a step-up rectifier in continuous conduction whose only loss is the resistance of its switch.
 *
 * <p>{@code eta = (1 - x) F(a)}, with {@code x = Ron / Re}, {@code a = (VM / V) x},
 * {@code F(a) = (4/pi) int_0^{pi/2} sin^2 / (1 - a sin)}, about {@code 1 + 0.862 a + 0.78 a^2}.
 *
 * <p>Valid for a sinusoidal line current and a small share of loss. Neglects inductor ripple and all other losses.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.6,
 * eq. (21.131)-(21.152).
 */
public final class CcmBoostRectifierEfficiency {

    private static final double ACCURACY = 1e-12;

    private CcmBoostRectifierEfficiency() {}

    /**
     * The integral F(a), exactly.
     *
     * @param a line peak over output voltage times switch over emulated resistance, 0.001 to below 1 [-]
     * @return F(a) [-]
     */
    public static double integral(double a) {
        return 2 / Math.PI * PeakedSineIntegral.first(a);
    }

    /**
     * Efficiency at a given switch resistance.
     *
     * @param peakRatio line peak over output voltage [-]
     * @param resistanceRatio switch resistance over emulated resistance, below 1 [-]
     * @return efficiency [-]
     */
    public static double efficiency(double peakRatio, double resistanceRatio) {
        Require.between("switch over emulated resistance [-]", resistanceRatio, 0, 1);
        return (1 - resistanceRatio) * integral(peakRatio * resistanceRatio);
    }

    /**
     * Switch resistance over emulated resistance that leaves a given efficiency.
     *
     * @param peakRatio line peak over output voltage, 0.1 to below 1 [-]
     * @param efficiency efficiency, 0.5 to 0.99 [-]
     * @return switch resistance over emulated resistance [-]
     */
    public static double resistanceRatio(double peakRatio, double efficiency) {
        Require.within("line peak over output voltage [-]", peakRatio, 0.1, 1);
        Require.within("efficiency [-]", efficiency, 0.5, 0.99);
        return new BrentSolver(ACCURACY)
                .solve(200, x -> efficiency(peakRatio, x) - efficiency, 0.001 / peakRatio, 0.99);
    }
}
