package lampproof.waveform;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.OptionalLong;

/** The values of a plot as bytes, row by row. */
final class RawBytes implements RawValues {

    /** Two rows fit into what {@link RawLines} keeps within reach. */
    private static final int LARGEST_ROW = 1 << 19;

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

    @Override
    public void read(List<Signal> chosen, CheckedRows rows) throws IOException {
        long most = head.points().orElse(Long.MAX_VALUE);
        lines.ready(2 * size);
        ByteBuffer bytes = ByteBuffer.wrap(lines.bytes()).order(order());
        int[] offsets = chosen.stream()
                .mapToInt(s -> width.scale() + width.value() * (s.column() - 1))
                .toArray();
        double[] numbers = new double[offsets.length + 1];
        long row = 0;
        while (row < most && lines.ready(size)) {
            int count = (int) Math.min(most - row, lines.withinReach() / size);
            for (int i = 0; i < count; i++) {
                int at = lines.position() + i * size;
                numbers[0] = time(bytes, at);
                for (int k = 0; k < offsets.length; k++) {
                    numbers[k + 1] = value(bytes, at + offsets[k], width.value());
                }
                rows.row(++row, numbers);
            }
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

    private double time(ByteBuffer bytes, int at) {
        double time = value(bytes, at, width.scale());
        return width.signMarks() ? Math.abs(time) : time;
    }

    private static double value(ByteBuffer bytes, int at, int width) {
        return width == Double.BYTES ? bytes.getDouble(at) : bytes.getFloat(at);
    }

    /** The order of bytes in which the first times make sense; the usual one in doubt. */
    private ByteOrder order() {
        return !sensible(ByteOrder.LITTLE_ENDIAN) && sensible(ByteOrder.BIG_ENDIAN)
                ? ByteOrder.BIG_ENDIAN
                : ByteOrder.LITTLE_ENDIAN;
    }

    private boolean sensible(ByteOrder order) {
        ByteBuffer bytes = ByteBuffer.wrap(lines.bytes()).order(order);
        int rows = Math.min(2, lines.withinReach() / size);
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double time = time(bytes, lines.position() + i * size);
            boolean possible = time == 0 || (Math.abs(time) > SHORTEST_TIME && Math.abs(time) < LONGEST_TIME);
            if (!possible || time < before) {
                return false;
            }
            before = time;
        }
        return true;
    }
}
