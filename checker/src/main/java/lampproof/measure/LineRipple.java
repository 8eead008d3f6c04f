package lampproof.measure;

/**
 * The swing of a channel at the pace of the line: its peak to peak value after averaging over bins of a hundredth of a
 * line half period, which removes the switching ripple.
 */
public final class LineRipple extends Measurement {

    /** Bins in a line half period. */
    static final int BINS = 100;

    private final Bins bins;
    private double smallest = Double.POSITIVE_INFINITY;
    private double largest = Double.NEGATIVE_INFINITY;

    /**
     * Measures the swing at the pace of the line.
     *
     * @param frequency line frequency [Hz]
     */
    public LineRipple(Window window, Channel channel, double frequency) {
        super(window);
        bins = new Bins(window, channel, 0.5 / frequency / BINS, this::bin);
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    @Override
    protected Measured measured() {
        bins.end();
        return largest < smallest
                ? Measured.absent("the window holds no hundredth of a line half period")
                : Measured.of(largest - smallest);
    }

    private void bin(double mean) {
        smallest = Math.min(smallest, mean);
        largest = Math.max(largest, mean);
    }
}
