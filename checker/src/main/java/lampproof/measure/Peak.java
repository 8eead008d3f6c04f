package lampproof.measure;

/** The largest value of a channel, every single point counted. */
public final class Peak extends Measurement {

    private final Channel channel;
    private double extreme = Double.NEGATIVE_INFINITY;

    /** Measures the largest value of a channel. */
    public Peak(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        extreme = Math.max(extreme, pieces.highest(channel));
    }

    @Override
    protected Measured measured() {
        return Measured.of(extreme);
    }
}
