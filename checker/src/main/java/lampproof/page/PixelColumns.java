package lampproof.page;

import java.util.Arrays;
import lampproof.waveform.Block;
import lampproof.waveform.BlockSink;

/**
 * Thins the rows of a waveform file to the pixel columns of a picture, in one pass and in the memory of the picture.
 *
 * <p>Curves run straight between their points. Each column keeps the exact least and greatest value of the curve within
 * it, so no peak is lost.
 */
final class PixelColumns implements BlockSink {

    private final double start;
    private final double width;
    private final int columns;
    private final double[][] low;
    private final double[][] high;
    private final double[] before;
    private double timeBefore = Double.NaN;

    /**
     * Columns of a stretch of time.
     *
     * @param start time at the left edge [s]
     * @param end time at the right edge [s]
     * @param columns number of columns
     * @param signals number of signals in a row
     */
    PixelColumns(double start, double end, int columns, int signals) {
        this.start = start;
        this.width = (end - start) / columns;
        this.columns = columns;
        this.low = new double[signals][columns];
        this.high = new double[signals][columns];
        this.before = new double[signals];
        for (int signal = 0; signal < signals; signal++) {
            Arrays.fill(low[signal], Double.POSITIVE_INFINITY);
            Arrays.fill(high[signal], Double.NEGATIVE_INFINITY);
        }
    }

    @Override
    public void block(Block block) {
        block.each(this::row);
    }

    void row(double time, double[] values) {
        if (time >= start && timeBefore <= end()) {
            spread(time, values);
        }
        timeBefore = time;
        System.arraycopy(values, 0, before, 0, before.length);
    }

    /** The thinned curve of a signal. */
    Trace trace(int signal) {
        return new Trace(start, end(), finite(low[signal]), finite(high[signal]));
    }

    private double end() {
        return start + width * columns;
    }

    /** Gives each column that the piece touches the values at which the piece enters and leaves it. */
    private void spread(double time, double[] values) {
        double from = Math.max(timeBefore, start);
        double to = Math.min(time, end());
        for (int column = column(from); column <= column(to); column++) {
            double enters = Math.max(from, start + column * width);
            double leaves = Math.min(to, start + (column + 1) * width);
            for (int signal = 0; signal < before.length; signal++) {
                widen(signal, column, at(enters, time, signal, values));
                widen(signal, column, at(leaves, time, signal, values));
            }
        }
        if (time == timeBefore) {
            edge(column(time), values);
        }
    }

    /** Both sides of an edge without a width. */
    private void edge(int column, double[] values) {
        for (int signal = 0; signal < before.length; signal++) {
            widen(signal, column, before[signal]);
            widen(signal, column, values[signal]);
        }
    }

    private double at(double when, double time, int signal, double[] values) {
        double share = time > timeBefore ? (when - timeBefore) / (time - timeBefore) : 1;
        return before[signal] + share * (values[signal] - before[signal]);
    }

    private void widen(int signal, int column, double value) {
        low[signal][column] = Math.min(low[signal][column], value);
        high[signal][column] = Math.max(high[signal][column], value);
    }

    private int column(double time) {
        return (int) Math.max(0, Math.min(columns - 1L, (long) Math.floor((time - start) / width)));
    }

    private static double[] finite(double[] values) {
        return Arrays.stream(values)
                .map(value -> Double.isFinite(value) ? value : Double.NaN)
                .toArray();
    }
}
