package lampproof.measure;

/** The root of the mean over time of the square of a channel. */
public final class RootMeanSquare extends Measurement {

    private final Channel channel;
    private double area;

    /** Measures the rms value of a channel. */
    public RootMeanSquare(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    @Override
    protected void add(Pieces pieces) {
        area += pieces.areaOfProduct(channel, channel);
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length")
                .map(Math::sqrt);
    }
}
