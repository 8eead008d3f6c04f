package lampproof.physics;

import java.util.Arrays;

/**
 * Depth of modulation of light.
 *
 * <p>{@code (max - min) / (max + min)}.
 *
 * <p>Valid over one whole period of the modulation; slow and fast ripple must be told apart before.
 *
 * <p>Source: IEEE Std 1789-2015, definition of modulation, read in documents that quote it.
 */
public final class PercentFlicker {

    private PercentFlicker() {}

    /**
     * Depth between two extremes.
     *
     * @param largest largest light or LED current [any unit]
     * @param smallest smallest, not negative [the same unit]
     * @return percent flicker as a fraction, 0 to 1 [-]
     */
    public static double of(double largest, double smallest) {
        Require.positive("largest light", largest);
        Require.within("smallest light", smallest, 0, largest);
        return (largest - smallest) / (largest + smallest);
    }

    /** Depth of samples that cover at least one period, as a fraction [-]. */
    public static double ofSamples(double... samples) {
        return of(
                Arrays.stream(samples).max().orElseThrow(),
                Arrays.stream(samples).min().orElseThrow());
    }
}
