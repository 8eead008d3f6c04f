package lampproof.prediction;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.IntToDoubleFunction;
import lampproof.physics.ConductedLimit;
import lampproof.quasistatic.ConductedNoise;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/**
 * The harmonic that comes nearest to a limit of conducted noise, or passes it furthest.
 *
 * @param order harmonic of the switching frequency
 * @param frequency its frequency [Hz]
 * @param level its level [dBuV]
 * @param limit its limit [dBuV]
 */
public record NoiseMargin(int order, double frequency, double level, double limit) {

    /** The figure that holds the distance to the quasi-peak limit. */
    public static final String QUASI_PEAK = "noise.margin.quasi_peak";

    /** A harmonic without a limit. */
    private static final NoiseMargin UNLIMITED = new NoiseMargin(0, 0, 0, Double.MAX_VALUE);

    /** Limit less level [dB]. */
    public double decibels() {
        return limit - level;
    }

    /** The harmonic with its level, in words. */
    public String found() {
        return "order " + order + " at " + Engineering.rounded(frequency, "Hz") + " " + PlainNumber.fixed(level, 1)
                + " dBuV";
    }

    /** The limit in words. */
    public String bound() {
        return "at most " + PlainNumber.fixed(limit, 1) + " dBuV";
    }

    /** The harmonic of a noise that comes nearest to either limit. */
    public static NoiseMargin least(ConductedNoise noise) {
        NoiseMargin quasiPeak = quasiPeak(noise.frequency(), noise::atCrest);
        NoiseMargin average = average(noise.frequency(), noise::mean);
        return quasiPeak.decibels() < average.decibels() ? quasiPeak : average;
    }

    /**
     * Against the quasi-peak limit.
     *
     * @param frequency switching frequency [Hz]
     * @param voltage rms voltage of each harmonic at a receiver [V]
     */
    public static NoiseMargin quasiPeak(double frequency, IntToDoubleFunction voltage) {
        return least(ConductedLimit::quasiPeak, frequency, voltage);
    }

    /**
     * Against the average limit.
     *
     * @param frequency switching frequency [Hz]
     * @param voltage rms voltage of each harmonic at a receiver [V]
     */
    public static NoiseMargin average(double frequency, IntToDoubleFunction voltage) {
        return least(ConductedLimit::average, frequency, voltage);
    }

    private static NoiseMargin least(
            DoubleFunction<OptionalDouble> limit, double frequency, IntToDoubleFunction voltage) {
        NoiseMargin least = UNLIMITED;
        for (int order = 1; order <= ConductedNoise.HIGHEST_ORDER; order++) {
            NoiseMargin margin = of(order, order * frequency, voltage, limit.apply(order * frequency));
            least = margin.decibels() < least.decibels() ? margin : least;
        }
        return least;
    }

    private static NoiseMargin of(int order, double frequency, IntToDoubleFunction voltage, OptionalDouble limit) {
        return limit.isEmpty()
                ? UNLIMITED
                : new NoiseMargin(
                        order, frequency, ConductedLimit.level(voltage.applyAsDouble(order)), limit.getAsDouble());
    }
}
