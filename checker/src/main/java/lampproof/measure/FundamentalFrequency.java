package lampproof.measure;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.util.Precision;
import org.hipparchus.util.ResizableDoubleArray;

/**
 * The frequency of the periodic waveform that fits a channel best [Hz].
 *
 * <p>Least squares of an offset and the first orders of a Fourier series, over the frequency, on means over bins much
 * shorter than a period: the fit of a sine as in IEEE Std 1057-2017, 5.4.2, with harmonics, since a few periods of a
 * distorted waveform pull a single sine off. Absent where the series explains little of the waveform, or its harmonics
 * nearly all: the period is then a fraction of the one searched for.
 */
public final class FundamentalFrequency extends Measurement {

    private static final int BINS_PER_PERIOD = 64;
    private static final int MOST_BINS = 1 << 14;
    private static final int ORDERS = 3;

    /** A record of few periods is pulled off by every order that the fit lacks; a long one is not. */
    private static final int ORDERS_OF_A_SHORT_RECORD = 15;

    private static final int SHORT = 1 << 11;
    private static final double LEAST_EXPLAINED = 0.5;

    /** Share of the fundamental in what the series explains; in a current of 200 % distortion it is 0.2 [-]. */
    private static final double LEAST_FUNDAMENTAL = 0.05;

    /** The values of a function around its maximum resolve nothing finer. */
    private static final double PRECISION = 3e-8;

    /**
     * In a window of little more than a period any harmonic pulls the fit off, by an unknown amount: a frequency is
     * accepted only if a single sine explains so much, with 3 % of harmonics [-].
     */
    private static final double LEAST_OF_ONE_PERIOD = 0.999;

    /** Deviation of a single sine by the least harmonics; measured [-]. */
    private static final double ABOUT = 1e-3;

    private static final String NO_PERIOD = "the window holds no whole period";
    private static final String NO_FREQUENCY = "no dominant frequency";
    private static final int MOST_TRIALS = 200;

    private final double lowest;
    private final double highest;
    private final double width;
    private final Bins bins;
    private final ResizableDoubleArray means = new ResizableDoubleArray();

    /**
     * Searches for the fundamental between two frequencies.
     *
     * @param lowest lowest frequency [Hz]
     * @param highest highest frequency [Hz]
     */
    public FundamentalFrequency(Window window, Channel channel, double lowest, double highest) {
        super(window);
        this.lowest = lowest;
        this.highest = highest;
        width = 1 / highest / BINS_PER_PERIOD;
        bins = new Bins(window, channel, width, this::store);
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    @Override
    protected Measured measured() {
        bins.end();
        double[] wave = means.getElements();
        if (wave.length < BINS_PER_PERIOD) {
            return Measured.absent(NO_PERIOD);
        }
        return wave.length < BINS_PER_PERIOD * highest / lowest ? ofOnePeriod(wave) : ofSeveral(wave);
    }

    private Measured ofSeveral(double[] wave) {
        SeriesFit fit = new SeriesFit(wave, width, ORDERS);
        double step = 0.25 / (wave.length * width);
        double rough = best(fit, step);
        double explained = fit.explained(rough);
        double fundamental = new SeriesFit(wave, width, 1).explained(rough);
        return explained < LEAST_EXPLAINED || fundamental < LEAST_FUNDAMENTAL * explained
                ? Measured.absent(NO_FREQUENCY)
                : between(refined(last(wave, fit), rough - step, rough, rough + step));
    }

    /** What fits ever better towards an end of the range has its best frequency elsewhere. */
    private Measured between(double frequency) {
        boolean inside = frequency > (1 - ABOUT) * lowest && frequency < (1 + ABOUT) * highest;
        return inside ? Measured.of(frequency) : Measured.absent(NO_FREQUENCY);
    }

    /** Many orders fit one period at any frequency: a single sine shows whether the window holds one. */
    private Measured ofOnePeriod(double[] wave) {
        SeriesFit fit = new SeriesFit(wave, width, 1);
        double once = 1 / window().length();
        double step = 0.25 * once;
        double rough = best(fit, step);
        double lone = refined(fit, rough - step, rough, rough + step);
        if (fit.explained(lone) < LEAST_OF_ONE_PERIOD) {
            return Measured.absent("barely one period of a non-sinusoidal signal: no frequency");
        }
        return lone < (1 - ABOUT) * once ? Measured.absent(NO_PERIOD) : Measured.of(Math.max(once, lone));
    }

    private SeriesFit last(double[] wave, SeriesFit rough) {
        return wave.length > SHORT ? rough : new SeriesFit(wave, width, ORDERS_OF_A_SHORT_RECORD);
    }

    private void store(double mean) {
        if (means.getNumElements() < MOST_BINS) {
            means.addElement(mean);
        }
    }

    /** The best frequency of a grid finer than the resolution of the window. */
    private double best(SeriesFit fit, double step) {
        double best = lowest;
        double most = Double.NEGATIVE_INFINITY;
        for (double frequency = lowest; frequency <= highest; frequency += step) {
            double explained = fit.explained(frequency);
            if (explained > most) {
                most = explained;
                best = frequency;
            }
        }
        return best;
    }

    /** The maximum between two frequencies, from a guess at it. */
    private static double refined(SeriesFit fit, double low, double guess, double high) {
        return new BrentOptimizer(PRECISION, Precision.SAFE_MIN)
                .optimize(
                        new UnivariateObjectiveFunction(fit::explained),
                        GoalType.MAXIMIZE,
                        new SearchInterval(low, high, guess),
                        new MaxEval(MOST_TRIALS))
                .getPoint();
    }
}
