package lampproof.physics;

/**
 * When the line current begins, peaks and stops within a half cycle.
 *
 * <p>Current flows from the first to the last sample of at least 5 per cent of the peak; the last peak is the last
 * sample within that stretch that is not below the one before it and above the one after it.
 *
 * <p>Valid for a current without noise; noise makes late peaks and so errs on the strict side.
 *
 * <p>Source: angles of IEC 61000-3-2, Class C up to 25 W; the threshold of 5 per cent from memory.
 *
 * @param start angle at which current begins [rad]
 * @param lastPeak angle of the last peak [rad]
 * @param end angle at which current stops [rad]
 */
public record CurrentFlow(double start, double lastPeak, double end) {

    private static final double THRESHOLD = 0.05;

    /** Checks the order of the angles. */
    public CurrentFlow {
        Require.within("start of flow [rad]", start, 0, Math.PI);
        Require.within("last peak [rad]", lastPeak, start, Math.PI);
        Require.within("end of flow [rad]", end, lastPeak, Math.PI);
    }

    /** Flow of samples of the current [A], evenly spaced from zero crossing to zero crossing, both ends included. */
    public static CurrentFlow ofSamples(double... halfCycle) {
        Require.within("samples of a half cycle [-]", halfCycle.length, 3, Integer.MAX_VALUE);
        double threshold = THRESHOLD * largest(halfCycle);
        Require.positive("peak of the current [A]", threshold);
        int first = 0;
        while (halfCycle[first] < threshold) {
            first++;
        }
        int last = halfCycle.length - 1;
        while (halfCycle[last] < threshold) {
            last--;
        }
        double step = Math.PI / (halfCycle.length - 1);
        return new CurrentFlow(first * step, lastPeak(halfCycle, first, last) * step, last * step);
    }

    private static int lastPeak(double[] samples, int first, int last) {
        int peak = last;
        while (peak > first && !isPeak(samples, peak, first, last)) {
            peak--;
        }
        return peak;
    }

    private static boolean isPeak(double[] samples, int i, int first, int last) {
        boolean risen = i == first || samples[i] >= samples[i - 1];
        return risen && (i == last || samples[i] > samples[i + 1]);
    }

    private static double largest(double[] samples) {
        double largest = samples[0];
        for (double sample : samples) {
            largest = Math.max(largest, sample);
        }
        return largest;
    }
}
