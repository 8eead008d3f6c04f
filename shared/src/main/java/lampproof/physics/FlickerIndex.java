package lampproof.physics;

import java.util.Arrays;

/**
 * Share of the light of a period that lies above its mean.
 *
 * <p>{@code area above the mean / total area}; sine of depth m: {@code m / pi}; square of duty D: {@code 1 - D}.
 *
 * <p>Valid over one whole period.
 *
 * <p>Source: IES, definition of flicker index, read in documents that restate it.
 */
public final class FlickerIndex {

    private FlickerIndex() {}

    /** Index of samples of light or LED current, evenly spaced over one period, its end left out [-]. */
    public static double ofSamples(double... samples) {
        double mean = Arrays.stream(samples).average().orElseThrow();
        Require.positive("mean light", mean);
        double above = Arrays.stream(samples).map(x -> Math.max(0, x - mean)).sum();
        return above / (mean * samples.length);
    }

    /** Index of a constant with a sine of a depth [-] on top [-]. */
    public static double sine(double depth) {
        Require.within("depth [-]", depth, 0, 1);
        return depth / Math.PI;
    }

    /** Index of light that is on for a duty [-] and off for the rest [-]. */
    public static double square(double duty) {
        Require.within("duty [-]", duty, 0, 1);
        return 1 - duty;
    }
}
