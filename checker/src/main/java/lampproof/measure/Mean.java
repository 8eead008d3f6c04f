package lampproof.measure;

/** The mean over time of a channel. */
public final class Mean extends Measurement {

    private final Channel channel;
    private double area;

    /** Measures the mean of a channel. */
    public Mean(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        area += pieces.area(channel);
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
