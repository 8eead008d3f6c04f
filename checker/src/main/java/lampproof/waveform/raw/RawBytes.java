package lampproof.waveform.raw;

import java.io.IOException;
import java.nio.ByteOrder;
import java.util.List;
import java.util.OptionalLong;
import lampproof.waveform.Block;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.FileFaults;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;

/** The values of a plot as bytes, row by row. */
final class RawBytes implements RawValues {

    private final RawHead head;
    private final RawLines lines;
    private final FileFaults faults;
    private final RawColumns columns;
    private final int size;

    RawBytes(RawHead head, RawWidth width, RawLines lines, FileFaults faults) {
        this.head = head;
        this.lines = lines;
        this.faults = faults;
        columns = new RawColumns(head, width, lines, faults);
        size = columns.rowSize();
    }

    @Override
    public void read(List<Signal> chosen, CheckedRows rows) throws IOException {
        long most = head.points().orElse(Long.MAX_VALUE);
        ByteOrder order = columns.order();
        double[][] numbers = new double[chosen.size() + 1][new Block(chosen.size()).capacity()];
        long row = 0;
        while (row < most && lines.ready(size)) {
            int within = Math.min(numbers[0].length, lines.withinReach() / size);
            int count = (int) Math.min(most - row, within);
            columns.times(order, numbers[0], count);
            for (int i = 0; i < chosen.size(); i++) {
                columns.values(order, chosen.get(i).column(), numbers[i + 1], count);
            }
            rows.rows(row, numbers, count);
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
            rows.remark(Remark.defect(faults.file() + ": the packed file ends early, file incomplete"));
        } else if (claimed.isEmpty() && lines.withinReach() > 0) {
            throw faults.whole(
                    (row * size + lines.withinReach()) + " bytes of values are no whole number of rows of " + size
                            + " bytes",
                    "run it again");
        } else if (claimed.isEmpty()) {
            rows.remark(Remark.defect(faults.file() + ": the head says 0 points, " + row
                    + " rows are there: head not completed, run aborted"));
        } else if (row < claimed.getAsLong()) {
            rows.remark(Remark.defect(faults.file() + ": the head says " + claimed.getAsLong() + " points, " + row
                    + " rows are there: file incomplete"));
        }
    }
}
