package lampproof.measure;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.util.ResizableDoubleArray;

/** How far the rms value of a channel over a period of its window lies from that over the last one, at most [-]. */
public final class PeriodRms extends Measurement {

    private final Channel channel;
    private final ResizableDoubleArray levels = new ResizableDoubleArray();
    private double edge;
    private double squares;

    /** Measures the rms value over each period; over all of a window that is not made of periods. */
    public PeriodRms(Window window, Channel channel) {
        super(window);
        this.channel = channel;
        edge = edge(1);
    }

    /** The rms value over all periods [unit of the channel]. */
    public Measured overall() {
        return result().map(change -> Math.sqrt(
                Arrays.stream(levels()).map(level -> level * level).average().orElseThrow()));
    }

    /** The rms value over each period [unit of the channel], in the order of time; after {@link #result}. */
    public double[] levels() {
        return levels.getElements();
    }

    /** The place of the period that lies farthest from the last one. */
    public int farthest() {
        double[] all = levels();
        double last = all[all.length - 1];
        return IntStream.range(0, all.length)
                .reduce((a, b) -> Math.abs(all[b] - last) > Math.abs(all[a] - last) ? b : a)
                .orElseThrow();
    }

    @Override
    protected void add(Pieces pieces) {
        int point = pieces.first();
        while (point < pieces.last()) {
            Pieces inside = pieces.before(edge, point);
            squares += inside.areaOfProduct(channel, channel);
            point = inside.last();
            if (point < pieces.last()) {
                across(pieces, point++);
            }
        }
    }

    /** Adds a piece in which one period or several end. */
    private void across(Pieces pieces, int point) {
        double from = pieces.times()[point];
        double to = pieces.times()[point + 1];
        while (to >= edge) {
            squares += pieces.part(point, from, edge).areaOfProduct(channel, channel);
            from = edge;
            close();
        }
        squares += pieces.part(point, from, to).areaOfProduct(channel, channel);
    }

    private void close() {
        levels.addElement(Math.sqrt(squares / window().period()));
        squares = 0;
        edge = edge(levels.getNumElements() + 1);
    }

    /** Where a period ends [s]; the last one ends with the window. */
    private double edge(int period) {
        return period < window().periods() ? window().start() + period * window().period() : Double.POSITIVE_INFINITY;
    }

    @Override
    protected Measured measured() {
        if (levels.getNumElements() < Math.max(1, window().periods())) {
            close();
        }
        double[] all = levels();
        double last = all[all.length - 1];
        double other = all[farthest()];
        return last == other ? Measured.of(0) : Measured.of(Math.abs(last - other) / Math.max(last, other));
    }
}
