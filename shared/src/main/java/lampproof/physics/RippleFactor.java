package lampproof.physics;

/**
 * What the triangular ripple of an inductor adds to rms current and conduction loss.
 *
 * <p>{@code factor = 1 + (di / I)^2 / 3}; {@code rms = I sqrt(factor)}.
 *
 * <p>Valid in continuous conduction, up to a half ripple equal to the mean.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, table 3.1 and eq. (A.4).
 */
public final class RippleFactor {

    private RippleFactor() {}

    /**
     * Factor on the conduction loss of the mean current.
     *
     * @param mean mean current [A]
     * @param halfRipple half of the peak-to-peak ripple, not above the mean [A]
     * @return loss factor, 1 to 4/3 [-]
     */
    public static double conductionLoss(double mean, double halfRipple) {
        Require.positive("mean current [A]", mean);
        Require.within("half ripple [A]", halfRipple, 0, mean);
        return 1 + Math.pow(halfRipple / mean, 2) / 3;
    }

    /**
     * Rms current of the inductor.
     *
     * @param mean mean current [A]
     * @param halfRipple half of the peak-to-peak ripple, not above the mean [A]
     * @return rms current [A]
     */
    public static double rms(double mean, double halfRipple) {
        return mean * Math.sqrt(conductionLoss(mean, halfRipple));
    }
}
