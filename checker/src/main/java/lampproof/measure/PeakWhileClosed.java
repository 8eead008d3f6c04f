package lampproof.measure;

/** The largest value of a channel while a gate is closed, the ends of each closure counted where the gate crosses. */
public final class PeakWhileClosed extends PiecewiseMeasurement {

    private final Channel channel;
    private final Gate gate;
    private double largest = Double.NEGATIVE_INFINITY;

    /** Measures a channel while a gate is closed. */
    public PeakWhileClosed(Window window, Channel channel, Gate gate) {
        super(window);
        this.channel = channel;
        this.gate = gate;
    }

    @Override
    protected void add(Piece piece) {
        boolean from = closed(piece.from(gate.channel()));
        boolean to = closed(piece.to(gate.channel()));
        if (from) {
            count(piece.from(channel));
        }
        if (to) {
            count(piece.to(channel));
        }
        if (from != to && piece.width() > 0) {
            count(piece.at(piece.passes(gate.channel(), gate.threshold()), channel));
        }
    }

    private boolean closed(double level) {
        return level >= gate.threshold();
    }

    private void count(double value) {
        largest = Math.max(largest, value);
    }

    @Override
    protected Measured measured() {
        return largest == Double.NEGATIVE_INFINITY ? Measured.absent("the gate never closes") : Measured.of(largest);
    }
}
