package lampproof.physics;

/**
 * Depth at which an alternating current in a thick conductor has fallen to 1/e.
 *
 * <p>{@code delta = sqrt(rho / (pi mu0 f))}.
 *
 * <p>Valid for non-magnetic conductors that are thick against delta.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, eq. (10.61)-(10.62).
 */
public final class SkinDepth {

    private SkinDepth() {}

    /**
     * Skin depth.
     *
     * @param resistivity resistivity of the conductor [Ohm m]
     * @param frequency frequency [Hz]
     * @return skin depth [m]
     */
    public static double of(double resistivity, double frequency) {
        Require.positive("resistivity [Ohm m]", resistivity);
        Require.positive("frequency [Hz]", frequency);
        return Math.sqrt(resistivity / (Math.PI * PhysicalConstants.VACUUM_PERMEABILITY * frequency));
    }
}
