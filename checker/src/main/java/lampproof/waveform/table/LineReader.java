package lampproof.waveform.table;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import lampproof.fault.UserFault;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.Remark;
import lampproof.waveform.TruncationCheck;

/** Reads a block of a table line by line, and rejects or notes irregular lines. */
final class LineReader {

    /** Words of a sentence, a comment or a statistic. */
    private static final Pattern WORDS = Pattern.compile("(#|%|//)?\\s*\\p{L}{3}.*");

    private final TableLayout layout;
    private final TableCells cells;
    private final CheckedRows rows;
    private final TruncationCheck truncation;
    private final TableFaults faults;
    private final double[] numbers;
    private final Set<Integer> filled = new HashSet<>();
    private boolean closed;

    LineReader(TableLayout layout, TableCells cells, CheckedRows rows, TruncationCheck truncation) {
        this.layout = layout;
        this.cells = cells;
        this.rows = rows;
        this.truncation = truncation;
        faults = new TableFaults(rows.faults().file());
        numbers = new double[cells.width()];
    }

    /** Whether the closing sentence of a table has been read. */
    boolean closed() {
        return closed;
    }

    /**
     * Reads a block.
     *
     * @param before number of the last line before it
     * @return number of its last line
     */
    long read(TextBlocks.Block block, long before) {
        byte[] b = block.bytes();
        long line = before;
        int start = 0;
        while (start < block.length()) {
            int end = start;
            while (b[end] != '\n' && b[end] != '\r') {
                end++;
            }
            line++;
            line(line, new String(b, start, end - start, StandardCharsets.UTF_8), end < block.length());
            start = b[end] == '\r' && end + 1 < block.length() && b[end + 1] == '\n' ? end + 2 : end + 1;
        }
        return line;
    }

    /**
     * Reads one line as cells.
     *
     * @param terminated whether the line has a line end
     */
    void cells(long line, List<String> row, boolean terminated) {
        if (row.size() == 1 && row.get(0).isEmpty()) {
            return;
        }
        if (noRow(row)) {
            truncation.noRow(line, damage(line, row));
            return;
        }
        truncation.rowFollows();
        if (row.size() > layout.columns()) {
            throw faults.fields(rows.place(line), row.size(), layout.columns());
        } else if (row.size() < layout.columns()) {
            truncation.truncated(line, row.size() + " fields where " + layout.columns() + " are expected");
        } else if (numbers(line, row)) {
            row(line, row.get(row.size() - 1), terminated);
        }
    }

    /** Whether a line has neither a time nor other cells, or has words instead. */
    private boolean noRow(List<String> row) {
        boolean words =
                WORDS.matcher(row.get(0)).matches() && !NumberNotation.notFinite(row.get(0)) && !runIntoARow(row);
        return (words || row.stream().allMatch(String::isEmpty)) && !timed(row) && !layout.closedByTrailer();
    }

    /** Whether words end like a row, as where two lines merged. */
    private boolean runIntoARow(List<String> row) {
        return row.size() > layout.columns()
                && row.subList(row.size() - 2, row.size()).stream()
                        .noneMatch(cell -> Double.isNaN(layout.numbers().value(cell)));
    }

    private boolean timed(List<String> row) {
        int time = layout.scale().column();
        return time < row.size() && !Double.isNaN(layout.numbers().value(row.get(time)));
    }

    private UserFault damage(long line, List<String> row) {
        return row.size() == layout.columns()
                ? faults.notANumber(rows.place(line), layout.name(0), row.get(0))
                : faults.fields(rows.place(line), row.size(), layout.columns());
    }

    private void line(long line, String text, boolean terminated) {
        if (text.isBlank() || text.replaceAll("\\s+", "").replaceFirst("^#", "").equals(layout.header())) {
            return;
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\t')) {
            throw faults.control(rows.place(line));
        }
        if (TableLayout.trailer(text)) {
            truncation.rowFollows();
            closed = true;
        } else if (closed) {
            throw faults.at(rows.place(line), "numbers behind the closing line", "");
        } else {
            cells(line, Cells.of(text, layout.delimiter()), terminated);
        }
    }

    private void row(long line, String lastCell, boolean terminated) {
        if (terminated) {
            truncation.terminated(lastCell);
        }
        if (terminated || truncation.complete(line, lastCell)) {
            rows.row(line, numbers);
        }
    }

    private boolean numbers(long line, List<String> row) {
        for (int column = 0; column < row.size(); column++) {
            int slot = cells.slot(column);
            String text = row.get(column);
            if (slot == TableCells.COPY
                    && !sameTime(text, row.get(layout.scale().column()))) {
                throw faults.copiesDiffer(rows.place(line));
            }
            if (slot == TableCells.EMPTY && !text.isEmpty() && filled.add(column)) {
                rows.remark(Remark.note(faults.file() + ", " + rows.place(line) + ": column " + (column + 1)
                        + " is empty until here, left out"));
            }
            if (slot >= 0) {
                numbers[slot] = layout.numbers().value(text);
                if (Double.isNaN(numbers[slot])) {
                    notANumber(line, column, text);
                    return false;
                }
            }
        }
        return true;
    }

    private boolean sameTime(String copy, String time) {
        return copy.equals(time)
                || layout.numbers().value(copy) == layout.numbers().value(time);
    }

    private void notANumber(long line, int column, String text) {
        String name = layout.name(column);
        if (NumberNotation.notFinite(text)) {
            throw faults.notFinite(rows.place(line), name, text);
        }
        truncation.truncated(line, "'" + text + "' in column '" + name + "' is not a number");
    }
}
