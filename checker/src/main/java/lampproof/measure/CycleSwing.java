package lampproof.measure;

/**
 * The swing of a channel within a switching cycle, mean over the cycles, less the straight drift from cycle to cycle that
 * the cycle before showed.
 */
public final class CycleSwing extends Cycles {

    private final Channel channel;
    private Piece latest;
    private double rise = Double.NaN;
    private double start;
    private double drift = Double.NaN;
    private double low;
    private double high;
    private double sum;
    private int counted;

    /** Measures the swing of a channel at the pace of a gate. */
    public CycleSwing(Window window, Channel channel, Gate gate) {
        super(window, gate);
        this.channel = channel;
    }

    @Override
    protected void add(Piece piece) {
        latest = piece;
        super.add(piece);
        if (!Double.isNaN(drift)) {
            double level = piece.to(channel) - drift * (piece.end() - rise);
            low = Math.min(low, level);
            high = Math.max(high, level);
        }
    }

    @Override
    protected void cycle(double on, double off, double nextOn) {
        if (!Double.isNaN(drift)) {
            sum += high - low;
            counted++;
        }
        double end = latest.at(nextOn, channel);
        drift = (end - start) / (nextOn - on);
        begin(nextOn, end);
    }

    @Override
    protected void begin() {
        if (Double.isNaN(rise)) {
            begin(firstRise(), latest.at(firstRise(), channel));
        }
    }

    private void begin(double time, double level) {
        rise = time;
        start = level;
        low = level;
        high = level;
    }

    @Override
    protected Measured overCycles() {
        return counted == 0
                ? Measured.absent("fewer than three rising edges in the window")
                : Measured.of(sum / counted);
    }
}
