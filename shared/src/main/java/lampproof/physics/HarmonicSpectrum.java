package lampproof.physics;

import java.util.Arrays;

/**
 * Harmonics of a periodic current, with its total harmonic distortion and distortion factor.
 *
 * <p>{@code THD = sqrt(sum of In^2 from n = 2) / I1}; {@code distortion factor = 1 / sqrt(1 + THD^2)}.
 *
 * <p>Valid for a current without direct component. Orders above the highest one held are neglected.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.3,
 * eq. (20.23)-(20.28).
 */
public final class HarmonicSpectrum {

    /** Highest order that IEC 61000-3-2 limits [-]. */
    public static final int HIGHEST_ORDER = 39;

    private final double[] currents;

    private HarmonicSpectrum(double[] currents) {
        Require.positive("fundamental current [A]", currents[0]);
        this.currents = currents;
    }

    /** Spectrum of rms currents of order 1, 2, 3 and so on [A]. */
    public static HarmonicSpectrum of(double fundamental, double... fromSecond) {
        double[] currents = new double[fromSecond.length + 1];
        currents[0] = fundamental;
        System.arraycopy(fromSecond, 0, currents, 1, fromSecond.length);
        return new HarmonicSpectrum(currents);
    }

    /** Spectrum of rms currents of order 1, 3, 5 and so on, without even orders [A]. */
    public static HarmonicSpectrum ofOdd(double fundamental, double... fromThird) {
        double[] currents = new double[2 * fromThird.length + 1];
        currents[0] = fundamental;
        for (int i = 0; i < fromThird.length; i++) {
            currents[2 * i + 2] = fromThird[i];
        }
        return new HarmonicSpectrum(currents);
    }

    /** Highest order held [-]. */
    public int highestOrder() {
        return currents.length;
    }

    /** Rms current of an order from 1 to the highest one held [A]. */
    public double current(int order) {
        Require.within("harmonic order [-]", order, 1, highestOrder());
        return currents[order - 1];
    }

    /** Current of an order over the fundamental [-]. */
    public double relative(int order) {
        return current(order) / current(1);
    }

    /** Rms current of all orders [A]. */
    public double rms() {
        return Math.sqrt(Arrays.stream(currents).map(i -> i * i).sum());
    }

    /** Total harmonic distortion, over the fundamental [-]. */
    public double thd() {
        return Math.sqrt(Arrays.stream(currents).skip(1).map(i -> i * i).sum()) / current(1);
    }

    /** Fundamental over total rms current [-]. */
    public double distortionFactor() {
        return current(1) / rms();
    }
}
