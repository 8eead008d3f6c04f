package lampproof.measure;

/** The mean over time of the product of two channels, such as the power of a voltage and a current. */
public final class MeanProduct extends Measurement {

    private final Channel one;
    private final Channel other;
    private double area;

    /** Measures the mean of the product of two channels. */
    public MeanProduct(Window window, Channel one, Channel other) {
        super(window);
        this.one = one;
        this.other = other;
    }

    @Override
    protected void add(Pieces pieces) {
        area += pieces.areaOfProduct(one, other);
    }

    @Override
    protected Measured measured() {
        return Measured.ratio(area, window().length(), "the window has no length");
    }
}
