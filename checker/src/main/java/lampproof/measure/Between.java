package lampproof.measure;

/** What a waveform does between its points. */
public enum Between {
    /** It runs straight, as a simulator draws it. Integrals are exact for straight lines. */
    STRAIGHT {
        @Override
        double product(double a0, double a1, double b0, double b1) {
            return (2 * a0 * b0 + a0 * b1 + a1 * b0 + 2 * a1 * b1) / 6;
        }
    },
    /**
     * Its points are even samples of a smooth waveform, as an instrument takes them; products are summed sample by
     * sample. A straight line between 40 samples a period would make a sine's rms 0.2 % too low.
     */
    SAMPLED {
        @Override
        double product(double a0, double a1, double b0, double b1) {
            return (a0 * b0 + a1 * b1) / 2;
        }
    };

    /** The mean of the product of two waveforms over one piece, each given by its values at both ends. */
    abstract double product(double a0, double a1, double b0, double b1);
}
