package lampproof.waveform;

/** Gathers rows into blocks and hands on each that is full. */
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

    /** Takes a row: its time [s] and the values of its signals. */
    public void row(double time, double[] values) {
        waiting.add(time, values);
        flush(waiting.capacity());
    }

    /** The rows that wait; whoever writes many at once writes behind them and then says how many. */
    Block waiting() {
        return waiting;
    }

    /** So many rows have been written behind those that waited. */
    void written(int rows) {
        waiting.setCount(waiting.count() + rows);
        flush(waiting.capacity());
    }

    /** Hands on the rows that still wait. */
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
