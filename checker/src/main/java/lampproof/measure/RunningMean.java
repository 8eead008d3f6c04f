package lampproof.measure;

import java.util.function.DoubleConsumer;

/** The mean of a channel over a sliding stretch of time, moved on by a sixteenth of that stretch. */
final class RunningMean {

    private static final int PARTS = 16;

    private final Bins bins;
    private final double[] parts = new double[PARTS];
    private final DoubleConsumer mean;
    private long filled;

    RunningMean(Window window, Channel channel, double stretch, DoubleConsumer mean) {
        this.mean = mean;
        bins = new Bins(window, channel, stretch / PARTS, this::part);
    }

    /** Why there is no running mean over the window; empty when there is one. */
    String impossible() {
        return bins.count() < PARTS ? "the window does not suit the running mean" : "";
    }

    void add(Pieces pieces) {
        bins.add(pieces);
    }

    void end() {
        bins.end();
    }

    private void part(double value) {
        parts[(int) (filled++ % PARTS)] = value;
        if (filled >= PARTS) {
            double sum = 0;
            for (double part : parts) {
                sum += part;
            }
            mean.accept(sum / PARTS);
        }
    }
}
