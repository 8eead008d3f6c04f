package lampproof.waveform;

/**
 * Successive rows of waveforms, column by column.
 *
 * <p>A block does not change until the next one is passed on, and is then reused: a receiver must not keep it.
 */
public final class Block {

    private static final int MOST_ROWS = 1 << 13;
    private static final int MOST_NUMBERS = 1 << 20;

    private final double[] times;
    private final double[][] values;
    private int count;

    /** An empty block for rows of a number of signals. */
    public Block(int signals) {
        int capacity = Math.max(1, Math.min(MOST_ROWS, MOST_NUMBERS / (signals + 1)));
        times = new double[capacity];
        values = new double[signals][capacity];
    }

    /** Largest number of rows. */
    public int capacity() {
        return times.length;
    }

    /** Number of rows in it. */
    public int count() {
        return count;
    }

    /** The times [s], never falling; equal times are the two sides of an edge. Only the first {@link #count} count. */
    public double[] times() {
        return times;
    }

    /** The values of a signal, in the order chosen [SI base unit]. Only the first {@link #count} count. */
    public double[] values(int signal) {
        return values[signal];
    }

    /** Sets the number of valid rows in its arrays. */
    public void setCount(int rows) {
        count = rows;
    }

    /** Adds a row. */
    void add(double time, double[] row) {
        times[count] = time;
        for (int i = 0; i < values.length; i++) {
            values[i][count] = row[i];
        }
        count++;
    }

    /** Passes the rows on one by one. */
    public void each(RowSink sink) {
        double[] row = new double[values.length];
        for (int at = 0; at < count; at++) {
            for (int i = 0; i < row.length; i++) {
                row[i] = values[i][at];
            }
            sink.row(times[at], row);
        }
    }
}
