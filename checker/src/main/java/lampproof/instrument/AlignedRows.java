package lampproof.instrument;

import java.util.ArrayList;
import java.util.List;
import lampproof.waveform.Block;
import lampproof.waveform.BlockSink;
import lampproof.waveform.BlockWriter;
import lampproof.waveform.Span;

/**
 * Compensates the delays of columns: the value of a late column is interpolated at the later time, linearly between its
 * points. Times at which a column has no value are omitted.
 */
final class AlignedRows implements BlockSink {

    private static final int TRIM = 4096;

    private record Row(double time, double[] values) {}

    private final double[] delays;
    private final double least;
    private final double most;
    private final int[] cursors;
    private final BlockWriter writer;
    private final List<Row> held = new ArrayList<>();

    private int next;
    private long count;
    private double start = Double.NaN;
    private double end = Double.NaN;

    /**
     * Aligns the requested columns.
     *
     * @param all every mapping, so that each pass covers the same times whatever its columns
     */
    AlignedRows(List<Mapping> wanted, List<Mapping> all, BlockSink sink) {
        delays = wanted.stream().mapToDouble(Mapping::delay).toArray();
        least = Math.min(0, all.stream().mapToDouble(Mapping::delay).min().orElse(0));
        most = Math.max(0, all.stream().mapToDouble(Mapping::delay).max().orElse(0));
        cursors = new int[delays.length];
        writer = new BlockWriter(delays.length, sink);
    }

    /** Writes the rows that remain. */
    void end() {
        writer.end();
    }

    long count() {
        return count;
    }

    Span span() {
        return new Span(start, end);
    }

    @Override
    public void block(Block block) {
        block.each(this::row);
    }

    private void row(double time, double[] values) {
        held.add(new Row(time, values.clone()));
        while (next < held.size() && held.get(next).time() + most <= time) {
            emit(held.get(next++).time());
        }
        trim();
    }

    private void emit(double time) {
        if (time + least < held.get(0).time() && count == 0) {
            return;
        }
        double[] aligned = new double[delays.length];
        for (int i = 0; i < aligned.length; i++) {
            aligned[i] = delays[i] == 0 ? held.get(next - 1).values()[i] : at(time + delays[i], i);
        }
        start = count++ == 0 ? time : start;
        end = time;
        writer.row(time, aligned);
    }

    private double at(double time, int column) {
        int cursor = cursors[column];
        while (cursor + 2 < held.size() && held.get(cursor + 1).time() < time) {
            cursor++;
        }
        cursors[column] = cursor;
        Row from = held.get(cursor);
        Row to = held.get(Math.min(cursor + 1, held.size() - 1));
        double width = to.time() - from.time();
        double share = width > 0 ? (time - from.time()) / width : 1;
        return from.values()[column] + share * (to.values()[column] - from.values()[column]);
    }

    /** Removes rows that no column needs any more. */
    private void trim() {
        int done = next;
        for (int i = 0; i < cursors.length; i++) {
            done = delays[i] == 0 ? done : Math.min(done, cursors[i]);
        }
        if (done - 1 > TRIM && count > 0) {
            held.subList(0, done - 1).clear();
            next -= done - 1;
            for (int i = 0; i < cursors.length; i++) {
                cursors[i] = Math.max(0, cursors[i] - (done - 1));
            }
        }
    }
}
