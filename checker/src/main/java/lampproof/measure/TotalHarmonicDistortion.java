package lampproof.measure;

/**
 * The rms value of the harmonics over that of the fundamental [-].
 *
 * <p>Source: IEC 61000-3-2, 3.16, with the orders 2 to 40.
 */
public final class TotalHarmonicDistortion {

    private static final double NO_FUNDAMENTAL = 1e-6;

    private TotalHarmonicDistortion() {}

    /** The distortion, orders 2 to 40. */
    public static Measured of(Harmonics harmonics) {
        return of(harmonics, Harmonics.HIGHEST_ORDER);
    }

    /** The distortion, orders 2 to a highest one. */
    public static Measured of(Harmonics harmonics, int highest) {
        return harmonics.result().then(fundamental -> {
            double rest = 0;
            for (int n = 2; n <= highest; n++) {
                rest = Math.hypot(rest, harmonics.amplitude(n).norm() / Math.sqrt(2));
            }
            return fundamental <= NO_FUNDAMENTAL * rest
                    ? Measured.absent("there is no fundamental")
                    : Measured.ratio(rest, fundamental, "there is no fundamental");
        });
    }
}
