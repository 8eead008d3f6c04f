package lampproof.measure;

/**
 * Largest less smallest over largest plus smallest value of a light or LED current [-], after a running mean.
 *
 * <p>The running mean removes the switching ripple, which the eye never sees. Values a little below zero count as dark,
 * so that the figure never passes 1; values far below make it absent. Source: IEEE Std 1789-2015, modulation (percent
 * flicker).
 */
public final class FlickerPercent extends Measurement {

    /** Running mean that keeps the line ripple and removes the switching ripple [s]. */
    public static final double RUNNING_MEAN = 0.1e-3;

    /** Noise and ringing around zero stay below this share of the peak; what reaches further is an offset. */
    private static final double OFFSET = 0.05;

    private final RunningMean smooth;
    private double largest = Double.NEGATIVE_INFINITY;
    private double smallest = Double.POSITIVE_INFINITY;
    private double lowest = Double.POSITIVE_INFINITY;

    /** Measures flicker after the usual running mean. */
    public FlickerPercent(Window window, Channel light) {
        this(window, light, RUNNING_MEAN);
    }

    /**
     * Measures flicker.
     *
     * @param runningMean stretch of the running mean [s], above 0
     */
    public FlickerPercent(Window window, Channel light, double runningMean) {
        super(window);
        smooth = new RunningMean(window, light, runningMean, this::value);
    }

    @Override
    protected void add(Pieces pieces) {
        smooth.add(pieces);
    }

    @Override
    protected Measured measured() {
        smooth.end();
        String impossible = smooth.impossible();
        if (impossible.isEmpty() && largest > 0 && lowest < -OFFSET * largest) {
            return Measured.absent("it goes below zero: offset of the sensor?");
        }
        return impossible.isEmpty()
                ? Measured.ratio(largest - smallest, largest + smallest, "there is no light")
                : Measured.absent(impossible);
    }

    private void value(double mean) {
        largest = Math.max(largest, Math.max(0, mean));
        smallest = Math.min(smallest, Math.max(0, mean));
        lowest = Math.min(lowest, mean);
    }
}
