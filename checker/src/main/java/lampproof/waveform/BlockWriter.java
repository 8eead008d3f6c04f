package lampproof.waveform;

/** Collects rows in blocks and passes on each full block. */
public final class BlockWriter {

    private final BlockPair blocks;
    private final BlockSink sink;
    private Block waiting;

    /**
     * Starts with no row.
     *
     * @param signals number of signals in a row
     */
    public BlockWriter(int signals, BlockSink sink) {
        blocks = new BlockPair(signals);
        this.sink = sink;
        waiting = blocks.next();
    }

    /** Adds a row: its time [s] and the values of its signals. */
    public void row(double time, double[] values) {
        waiting.add(time, values);
        flush(waiting.capacity());
    }

    /** The block with the pending rows; a writer of many rows appends them here and then calls {@link #written}. */
    Block waiting() {
        return waiting;
    }

    /** Adds the number of rows that were appended to the pending ones. */
    void written(int rows) {
        waiting.setCount(waiting.count() + rows);
        flush(waiting.capacity());
    }

    /** Passes on the pending rows. */
    public void end() {
        flush(1);
    }

    private void flush(int least) {
        if (waiting.count() >= least) {
            sink.block(waiting);
            waiting = blocks.next();
            waiting.setCount(0);
        }
    }
}
