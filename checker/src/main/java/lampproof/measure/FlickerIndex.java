package lampproof.measure;

import java.util.Arrays;
import org.hipparchus.util.ResizableDoubleArray;

/**
 * The area of a light or LED current above its mean over the whole area [-], after a running mean.
 *
 * <p>Source: Illuminating Engineering Society, The Lighting Handbook, flicker index. The window should hold whole
 * periods of the flicker.
 */
public final class FlickerIndex extends Measurement {

    private static final int PARTS = 16;
    private static final long MOST = 2_000_000;

    private final Bins bins;
    private final ResizableDoubleArray parts = new ResizableDoubleArray();

    /** Measures the flicker index after the usual running mean. */
    public FlickerIndex(Window window, Channel light) {
        this(window, light, FlickerPercent.RUNNING_MEAN);
    }

    /**
     * Measures the flicker index.
     *
     * @param runningMean stretch of the running mean [s], above 0
     */
    public FlickerIndex(Window window, Channel light, double runningMean) {
        super(window);
        bins = new Bins(window, light, runningMean / PARTS, parts::addElement);
    }

    @Override
    protected void add(Pieces pieces) {
        if (bins.count() <= MOST) {
            bins.add(pieces);
        }
    }

    @Override
    protected Measured measured() {
        bins.end();
        return bins.count() < PARTS || bins.count() > MOST
                ? Measured.absent("the window does not suit the running mean")
                : index(smoothed(parts.getElements()));
    }

    private static Measured index(double[] light) {
        double total = Arrays.stream(light).sum();
        double mean = total / light.length;
        double above = Arrays.stream(light).map(v -> Math.max(0, v - mean)).sum();
        return Measured.ratio(above, total, "there is no light");
    }

    /** The running mean, continued around the ends of the window, which holds whole periods. */
    private static double[] smoothed(double[] parts) {
        double[] means = new double[parts.length];
        double sum = 0;
        for (int i = 0; i < PARTS - 1; i++) {
            sum += parts[i];
        }
        for (int i = 0; i < parts.length; i++) {
            sum += parts[(i + PARTS - 1) % parts.length];
            means[i] = Math.max(0, sum / PARTS);
            sum -= parts[i];
        }
        return means;
    }
}
