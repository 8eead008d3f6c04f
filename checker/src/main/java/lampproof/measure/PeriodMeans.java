package lampproof.measure;

import java.util.Arrays;
import org.hipparchus.util.ResizableDoubleArray;

/** The mean of a channel over each period of its window, to see whether it has settled. */
public final class PeriodMeans extends Measurement {

    private final Bins bins;
    private final ResizableDoubleArray means = new ResizableDoubleArray();

    /** Measures the mean over each period. */
    public PeriodMeans(Window window, Channel channel) {
        super(window);
        bins = new Bins(window, channel, window.period(), means::addElement);
    }

    /** The mean over each period [unit of the channel], in the order of time. */
    public double[] means() {
        bins.end();
        return means.getElements();
    }

    /**
     * The longest stretch of whole periods at the end of the window over which every mean agrees with the last one.
     *
     * @param relative allowed difference, relative to the largest mean [-]
     */
    public Window settled(double relative) {
        double[] all = means();
        double largest = Arrays.stream(all).map(Math::abs).max().orElse(0);
        int first = all.length;
        while (first > 0 && Math.abs(all[first - 1] - all[all.length - 1]) <= relative * largest) {
            first--;
        }
        int periods = all.length - first;
        Window whole = window();
        return new Window(whole.end() - periods * whole.period(), whole.end(), periods, whole.what());
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    /** The mean over the last period. */
    @Override
    protected Measured measured() {
        double[] all = means();
        return all.length == 0 ? Measured.absent("no whole period") : Measured.of(all[all.length - 1]);
    }
}
