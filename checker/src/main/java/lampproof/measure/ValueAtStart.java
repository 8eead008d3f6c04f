package lampproof.measure;

/** The value of a channel at the start of a window. */
public final class ValueAtStart extends Measurement {

    private final Channel channel;
    private double value = Double.NaN;

    /** Measures the value at the start of a window. */
    public ValueAtStart(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        value = Double.isNaN(value) ? pieces.from(channel) : value;
    }

    @Override
    protected Measured measured() {
        return Measured.of(value);
    }
}
