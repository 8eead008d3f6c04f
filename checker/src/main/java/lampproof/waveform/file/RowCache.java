package lampproof.waveform.file;

import java.io.IOException;
import java.util.List;
import lampproof.waveform.BlockSink;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Signal;

/** Keeps the rows of a first pass for further passes over the same signals. */
final class RowCache {

    private List<Integer> columns = List.of();
    private RowStore store;
    private ReadResult reading;

    /** Whether a pass over some signals is possible without the file. */
    boolean holds(List<Signal> chosen) {
        return reading != null && columns.equals(columns(chosen));
    }

    /** Repeats the pass. */
    ReadResult replay(BlockSink sink) throws IOException {
        store.replay(sink);
        return reading;
    }

    /**
     * A sink that passes rows on to another one and keeps a copy.
     *
     * @param most largest number of bytes
     */
    BlockSink recorder(List<Signal> chosen, long most, BlockSink sink) {
        reading = null;
        columns = columns(chosen);
        store = store == null ? RowStore.open(chosen, most).orElse(null) : null;
        RowStore rows = store;
        return rows == null
                ? sink
                : block -> {
                    rows.block(block);
                    sink.block(block);
                };
    }

    /** Ends the recorded pass. */
    void ended(ReadResult result) {
        reading = store != null && store.complete() ? result : null;
    }

    private static List<Integer> columns(List<Signal> signals) {
        return signals.stream().map(Signal::column).toList();
    }
}
