package lampproof.waveform.raw;

import java.io.IOException;
import java.util.List;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.FileFaults;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;
import lampproof.waveform.TruncationCheck;

/** The values of a plot as text: the number of the row, then one value for each vector. */
final class RawText implements RawValues {

    private static final int LONGEST_WORD = 256;

    private final RawHead head;
    private final RawLines lines;
    private final FileFaults faults;
    private boolean wordEnded;

    RawText(RawHead head, RawLines lines, FileFaults faults) {
        this.head = head;
        this.lines = lines;
        this.faults = faults;
    }

    @Override
    public void read(List<Signal> chosen, CheckedRows rows) throws IOException {
        TruncationCheck truncation = new TruncationCheck(rows);
        int[] columns = chosen.stream().mapToInt(Signal::column).toArray();
        double[] all = new double[head.vectors().size()];
        double[] numbers = new double[columns.length + 1];
        long most = head.points().orElse(Long.MAX_VALUE);
        long row = 0;
        while (row < most && row(row, all, rows, truncation)) {
            row++;
            numbers[0] = all[0];
            for (int i = 0; i < columns.length; i++) {
                numbers[i + 1] = all[columns[i]];
            }
            rows.row(row, numbers);
        }
        truncation.end();
        judge(row, rows);
    }

    @Override
    public void skip() throws IOException {
        long left = head.points().orElse(Long.MAX_VALUE);
        int words = (head.vectors().size() + 1);
        while (left > 0 && !word().isEmpty()) {
            for (int i = 1; i < words; i++) {
                word();
            }
            left--;
        }
    }

    /** Reads one row; false when there is none, or it is torn. */
    private boolean row(long index, double[] all, CheckedRows rows, TruncationCheck truncation) throws IOException {
        String number = word();
        if (number.isEmpty()) {
            return false;
        }
        if (!number.equals(String.valueOf(index))) {
            throw faults.at(rows.place(index + 1), "found '" + number + "' in place of the row number " + index, "");
        }
        String last = "";
        for (int i = 0; i < all.length; i++) {
            last = word();
            if (last.isEmpty()) {
                truncation.truncated(index + 1, i + " of " + all.length + " values");
                return false;
            }
            all[i] = value(index + 1, i, last, rows);
        }
        if (wordEnded) {
            truncation.terminated(last);
        }
        return wordEnded || truncation.complete(index + 1, last);
    }

    private double value(long row, int column, String text, CheckedRows rows) {
        double value = NumberNotation.POINT.value(text);
        if (!Double.isNaN(value)) {
            return value;
        }
        String name = head.vectors().get(column).name();
        throw NumberNotation.notFinite(text)
                ? faults.notFinite(rows.place(row), name, text)
                : faults.notANumber(rows.place(row), name, text);
    }

    private void judge(long row, CheckedRows rows) {
        if (lines.endedEarly()) {
            rows.remark(Remark.defect(faults.file() + ": the packed file ends early, file incomplete"));
        } else if (head.points().isEmpty()) {
            rows.remark(Remark.defect(faults.file() + ": the head says 0 points, " + row
                    + " rows are there: head not completed, run aborted"));
        } else if (row < head.points().getAsLong()) {
            rows.remark(Remark.defect(faults.file() + ": the head says "
                    + head.points().getAsLong() + " points, " + row + " rows are there: file incomplete"));
        }
    }

    /** The next word; empty at the end. */
    private String word() throws IOException {
        int b = lines.character();
        while (b >= 0 && b <= ' ') {
            b = lines.character();
        }
        StringBuilder word = new StringBuilder();
        while (b > ' ' && word.length() < LONGEST_WORD) {
            word.append((char) b);
            b = lines.character();
        }
        wordEnded = b >= 0;
        return word.toString();
    }
}
