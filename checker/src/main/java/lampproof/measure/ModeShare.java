package lampproof.measure;

/**
 * The share of switching cycles in which the inductor current rests at zero before the next turn-on [-]: 1 in
 * discontinuous, 0 in continuous mode.
 */
public final class ModeShare extends Cycles {

    private final Channel current;
    private final double zero;
    private final double shortestRest;
    private double rest;
    private double rested;
    private int resting;

    /**
     * Measures the share of discontinuous cycles.
     *
     * @param zero current that counts as zero [A]
     * @param shortestRest rest that counts as one [s]; the minimum off-time of a boundary-mode law goes here
     */
    public ModeShare(Window window, Gate gate, Channel current, double zero, double shortestRest) {
        super(window, gate);
        this.current = current;
        this.zero = zero;
        this.shortestRest = shortestRest;
    }

    /** The share of time in which the current rests [-]. */
    public Measured restingTime() {
        return result().map(share -> rested / span());
    }

    @Override
    protected void add(Piece piece) {
        boolean off = !on();
        super.add(piece);
        if (off && !on()) {
            rest += piece.timeUpTo(zero, current);
        }
    }

    @Override
    protected void cycle(double on, double off, double nextOn) {
        rested += rest;
        resting += rest > shortestRest ? 1 : 0;
    }

    @Override
    protected void begin() {
        rest = 0;
    }

    @Override
    protected Measured overCycles() {
        return Measured.of((double) resting / cycles());
    }
}
