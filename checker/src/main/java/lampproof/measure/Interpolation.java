package lampproof.measure;

/** The course of a waveform between its points. */
public enum Interpolation {
    /** Straight lines, as a simulator draws them. Integrals are exact for straight lines. */
    LINEAR {
        @Override
        double areaOfProduct(double[] times, double[] a, double[] b, int first, int last) {
            double sum = 0;
            double time = times[first];
            double a0 = a[first];
            double b0 = b[first];
            for (int i = first + 1; i <= last; i++) {
                double a1 = a[i];
                double b1 = b[i];
                sum += (times[i] - time) * ((2 * a0 + a1) * b0 + (a0 + 2 * a1) * b1);
                time = times[i];
                a0 = a1;
                b0 = b1;
            }
            return sum / 6;
        }
    },
    /**
     * Its points are even samples of a smooth waveform, as an instrument takes them; products are summed sample by
     * sample. A straight line between 40 samples a period would make a sine's rms 0.2 % too low.
     */
    SAMPLED {
        @Override
        double areaOfProduct(double[] times, double[] a, double[] b, int first, int last) {
            double sum = 0;
            for (int i = first; i < last; i++) {
                sum += (times[i + 1] - times[i]) * (a[i] * b[i] + a[i + 1] * b[i + 1]);
            }
            return sum / 2;
        }
    };

    /** The time integral of the product of two waveforms, given by their points, from one of the points to another. */
    abstract double areaOfProduct(double[] times, double[] a, double[] b, int first, int last);
}
