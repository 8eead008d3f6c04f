package lampproof.physics;

/**
 * What a capacitor across a string leaves of the modulation of its current.
 *
 * <p>{@code depth = source depth / sqrt(1 + (w Rd C)^2)}, with the angular frequency w of the ripple, twice the
 * line's.
 *
 * <p>Valid for a source of current whose ripple is a sine, and as long as the string conducts all the time. Neglects
 * the curvature of the string.
 *
 * <p>Source: first-order circuit, common practice, no source.
 */
public final class LedRippleFilter {

    private LedRippleFilter() {}

    /**
     * Modulation of the string current.
     *
     * @param sourceDepth amplitude over mean of the source current [-]
     * @param resistance dynamic resistance of the string [Ohm]
     * @param capacitance capacitance across the string [F]
     * @param rippleFrequency frequency of the ripple [Hz]
     * @return amplitude over mean of the string current [-]
     */
    public static double depth(double sourceDepth, double resistance, double capacitance, double rippleFrequency) {
        Require.notNegative("source depth [-]", sourceDepth);
        Require.notNegative("dynamic resistance [Ohm]", resistance);
        Require.notNegative("capacitance [F]", capacitance);
        Require.notNegative("ripple frequency [Hz]", rippleFrequency);
        return sourceDepth / Math.hypot(1, 2 * Math.PI * rippleFrequency * resistance * capacitance);
    }

    /**
     * Capacitance that brings the modulation down to a given depth.
     *
     * @param sourceDepth amplitude over mean of the source current [-]
     * @param resistance dynamic resistance of the string [Ohm]
     * @param depth amplitude over mean of the string current wanted, not above the source's [-]
     * @param rippleFrequency frequency of the ripple [Hz]
     * @return capacitance [F]
     */
    public static double capacitance(double sourceDepth, double resistance, double depth, double rippleFrequency) {
        Require.positive("dynamic resistance [Ohm]", resistance);
        Require.positive("depth [-]", depth);
        Require.within("depth [-]", depth, 0, sourceDepth);
        Require.positive("ripple frequency [Hz]", rippleFrequency);
        double ratio = sourceDepth / depth;
        return Math.sqrt(ratio * ratio - 1) / (2 * Math.PI * rippleFrequency * resistance);
    }
}
