package lampproof.measure;

/** The value of a channel at the end of a window. */
public final class ValueAtEnd extends Measurement {

    private final Channel channel;
    private double value = Double.NaN;

    /** Measures the value at the end of a window. */
    public ValueAtEnd(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        value = pieces.to(channel);
    }

    @Override
    protected Measured measured() {
        return Measured.of(value);
    }
}
