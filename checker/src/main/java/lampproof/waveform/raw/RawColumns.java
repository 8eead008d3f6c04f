package lampproof.waveform.raw;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import lampproof.waveform.FileFaults;

/** Reads columns of numbers from the buffered bytes of {@link RawLines}. */
final class RawColumns {

    /** Two rows fit into the buffer of {@link RawLines}. */
    private static final int LARGEST_ROW = 1 << 19;

    private static final VarHandle DOUBLES = view(double[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_DOUBLES = view(double[].class, ByteOrder.BIG_ENDIAN);
    private static final VarHandle FLOATS = view(float[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_FLOATS = view(float[].class, ByteOrder.BIG_ENDIAN);

    private static final int ROWS_THAT_TELL = 64;

    static final double LONGEST_TIME = 1e9;
    static final double SHORTEST_TIME = 1e-30;

    private final RawWidth width;
    private final RawLines lines;
    private final int size;

    RawColumns(RawHead head, RawWidth width, RawLines lines, FileFaults faults) {
        this.width = width;
        this.lines = lines;
        size = width.row(head);
        if (size > LARGEST_ROW) {
            throw faults.whole("a row of " + head.vectors().size() + " vectors is too long", "");
        }
    }

    private static VarHandle view(Class<?> numbers, ByteOrder order) {
        return MethodHandles.byteArrayViewVarHandle(numbers, order);
    }

    /** Length of a row [bytes]. */
    int rowSize() {
        return size;
    }

    /** The times of the next rows. */
    void times(ByteOrder order, double[] into, int count) {
        column(order, 0, width.scale(), into, count);
        for (int i = 0; width.signMarks() && i < count; i++) {
            into[i] = Math.abs(into[i]);
        }
    }

    /** The values of the next rows for a vector, its column counted from 0. */
    void values(ByteOrder order, int column, double[] into, int count) {
        column(order, width.scale() + width.value() * (column - 1), width.value(), into, count);
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

    /** The byte order in which the first times are plausible; little-endian in doubt. */
    ByteOrder order() throws IOException {
        return !sensible(ByteOrder.LITTLE_ENDIAN) && sensible(ByteOrder.BIG_ENDIAN)
                ? ByteOrder.BIG_ENDIAN
                : ByteOrder.LITTLE_ENDIAN;
    }

    /** Whether the first times are plausible in one of the byte orders. */
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
