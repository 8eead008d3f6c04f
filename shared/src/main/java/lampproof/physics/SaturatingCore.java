package lampproof.physics;

/**
 * Current of an inductor whose core saturates, over its flux linkage.
 *
 * <p>With {@code x = flux linkage / inductance}: {@code i = x} up to the saturation current Is, beyond it
 * {@code i = x + (1 / k - 1) (x - Is)}, k being the share of the inductance that is left.
 *
 * <p>Valid for ferrite, whose inductance falls within some tenths of Is; neglects hysteresis and the rounded knee.
 *
 * <p>Source: piecewise-linear magnetisation, common practice, no source.
 */
public final class SaturatingCore {

    private SaturatingCore() {}

    /**
     * Current at a flux linkage.
     *
     * @param flux flux linkage over inductance x [A]
     * @param saturation saturation current Is; infinite for a core that never saturates [A]
     * @param left share of the inductance that is left, above 0 up to 1 [-]
     * @return current [A]
     */
    public static double current(double flux, double saturation, double left) {
        double beyond = beyond(flux, saturation, left);
        return flux + (1 / left - 1) * beyond;
    }

    /**
     * Flux linkage over inductance at a current; the inverse of {@link #current}.
     *
     * @param current current [A]
     * @param saturation saturation current Is; infinite for a core that never saturates [A]
     * @param left share of the inductance that is left, above 0 up to 1 [-]
     * @return flux linkage over inductance [A]
     */
    public static double flux(double current, double saturation, double left) {
        double beyond = beyond(current, saturation, left);
        return current - (1 - left) * beyond;
    }

    private static double beyond(double value, double saturation, double left) {
        if (!(saturation > 0)) {
            throw new IllegalArgumentException("saturation current [A] must be above 0, found " + saturation);
        }
        Require.within("share of the inductance that is left [-]", left, Double.MIN_NORMAL, 1);
        return Math.abs(value) > saturation ? value - Math.copySign(saturation, value) : 0;
    }
}
