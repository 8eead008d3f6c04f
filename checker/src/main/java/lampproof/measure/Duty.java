package lampproof.measure;

/** The share of time that a gate is on, over whole cycles [-]. */
public final class Duty extends Cycles {

    private double on;

    /** Measures the duty of a gate. */
    public Duty(Window window, Gate gate) {
        super(window, gate);
    }

    @Override
    protected void cycle(double start, double off, double nextOn) {
        on += off - start;
    }

    @Override
    protected Measured overCycles() {
        return Measured.of(on / span());
    }
}
