package lampproof.measure;

/** How often a gate switches on in a second [Hz], over whole cycles. */
public final class SwitchingFrequency extends Cycles {

    private double shortest = Double.POSITIVE_INFINITY;
    private double longest;

    /** Measures the mean switching frequency; for that around one moment, give a narrow window. */
    public SwitchingFrequency(Window window, Gate gate) {
        super(window, gate);
    }

    /** The frequency of the shortest cycle. */
    public Measured highest() {
        return result().map(mean -> 1 / shortest);
    }

    /** The frequency of the longest cycle. */
    public Measured lowest() {
        return result().map(mean -> 1 / longest);
    }

    @Override
    protected void cycle(double on, double off, double nextOn) {
        shortest = Math.min(shortest, nextOn - on);
        longest = Math.max(longest, nextOn - on);
    }

    @Override
    protected Measured overCycles() {
        return Measured.of(cycles() / span());
    }
}
