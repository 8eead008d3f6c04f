package lampproof.measure;

/** The smallest value of a channel, every single point counted. */
public final class Trough extends Measurement {

    private final Channel channel;
    private double extreme = Double.POSITIVE_INFINITY;

    /** Measures the smallest value of a channel. */
    public Trough(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        extreme = Math.min(extreme, pieces.lowest(channel));
    }

    @Override
    protected Measured measured() {
        return Measured.of(extreme);
    }
}
