package lampproof.waveform;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.List;
import java.util.OptionalLong;

/** The values of a plot as bytes, row by row. */
final class RawBytes implements RawValues {

    /** Two rows fit into what {@link RawLines} keeps within reach. */
    private static final int LARGEST_ROW = 1 << 19;

    private static final VarHandle DOUBLES = view(double[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_DOUBLES = view(double[].class, ByteOrder.BIG_ENDIAN);
    private static final VarHandle FLOATS = view(float[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_FLOATS = view(float[].class, ByteOrder.BIG_ENDIAN);

    private static final int ROWS_THAT_TELL = 64;

    static final double LONGEST_TIME = 1e9;
    static final double SHORTEST_TIME = 1e-30;

    private final RawHead head;
    private final RawWidth width;
    private final RawLines lines;
    private final Faults faults;
    private final int size;

    RawBytes(RawHead head, RawWidth width, RawLines lines, Faults faults) {
        this.head = head;
        this.width = width;
        this.lines = lines;
        this.faults = faults;
        size = width.row(head);
        if (size > LARGEST_ROW) {
            throw faults.whole("a row of " + head.vectors().size() + " vectors is too long", "");
        }
    }

    private static VarHandle view(Class<?> numbers, ByteOrder order) {
        return MethodHandles.byteArrayViewVarHandle(numbers, order);
    }

    @Override
    public void read(List<Signal> chosen, CheckedRows rows) throws IOException {
        long most = head.points().orElse(Long.MAX_VALUE);
        ByteOrder order = order();
        double[][] columns = new double[chosen.size() + 1][new Block(chosen.size()).room()];
        long row = 0;
        while (row < most && lines.ready(size)) {
            int within = Math.min(columns[0].length, lines.withinReach() / size);
            int count = (int) Math.min(most - row, within);
            times(order, columns[0], count);
            for (int i = 0; i < chosen.size(); i++) {
                int offset = width.scale() + width.value() * (chosen.get(i).column() - 1);
                column(order, offset, width.value(), columns[i + 1], count);
            }
            rows.rows(row, columns, count);
            row += count;
            lines.take(count * size);
        }
        judge(row, rows);
    }

    @Override
    public void skip() throws IOException {
        long left = head.points().orElse(Long.MAX_VALUE);
        while (left > 0 && lines.ready(size)) {
            int count = (int) Math.min(left, lines.withinReach() / size);
            lines.take(count * size);
            left -= count;
        }
    }

    private void judge(long row, CheckedRows rows) {
        OptionalLong claimed = head.points();
        if (lines.endedEarly()) {
            rows.remark(Remark.spoiling(faults.file() + ": the packed file ends early, file incomplete"));
        } else if (claimed.isEmpty() && lines.withinReach() > 0) {
            throw faults.whole(
                    (row * size + lines.withinReach()) + " bytes of values are no whole number of rows of " + size
                            + " bytes",
                    "run it again");
        } else if (claimed.isEmpty()) {
            rows.remark(Remark.spoiling(faults.file() + ": the head says 0 points, " + row
                    + " rows are there: head not completed, run aborted"));
        } else if (row < claimed.getAsLong()) {
            rows.remark(Remark.spoiling(faults.file() + ": the head says " + claimed.getAsLong() + " points, " + row
                    + " rows are there: file incomplete"));
        }
    }

    private void times(ByteOrder order, double[] into, int count) {
        column(order, 0, width.scale(), into, count);
        for (int i = 0; width.signMarks() && i < count; i++) {
            into[i] = Math.abs(into[i]);
        }
    }

    /** The values of the next rows for the vector that begins at an offset in each. */
    private void column(ByteOrder order, int offset, int width, double[] into, int count) {
        boolean little = order == ByteOrder.LITTLE_ENDIAN;
        byte[] bytes = lines.bytes();
        int at = lines.position() + offset;
        if (width == Double.BYTES) {
            for (int i = 0; i < count; i++, at += size) {
                into[i] = little ? (double) DOUBLES.get(bytes, at) : (double) BIG_DOUBLES.get(bytes, at);
            }
        } else {
            for (int i = 0; i < count; i++, at += size) {
                into[i] = little ? (float) FLOATS.get(bytes, at) : (float) BIG_FLOATS.get(bytes, at);
            }
        }
    }

    /** The order of bytes in which the first times make sense; the usual one in doubt. */
    private ByteOrder order() throws IOException {
        return !sensible(ByteOrder.LITTLE_ENDIAN) && sensible(ByteOrder.BIG_ENDIAN)
                ? ByteOrder.BIG_ENDIAN
                : ByteOrder.LITTLE_ENDIAN;
    }

    /** Whether the first times make sense in one order of bytes or the other. */
    boolean plausible() throws IOException {
        return sensible(ByteOrder.LITTLE_ENDIAN) || sensible(ByteOrder.BIG_ENDIAN);
    }

    private boolean sensible(ByteOrder order) throws IOException {
        double[] times = new double[Math.min(ROWS_THAT_TELL, 2 * LARGEST_ROW / size)];
        lines.ready(times.length * size);
        int rows = Math.min(times.length, lines.withinReach() / size);
        times(order, times, rows);
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double time = times[i];
            boolean possible = time == 0 || (Math.abs(time) > SHORTEST_TIME && Math.abs(time) < LONGEST_TIME);
            if (!possible || time < before) {
                return false;
            }
            before = time;
        }
        return true;
    }
}
