package lampproof.waveform;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Reads a plain table of numbers straight from its bytes, one line in memory at a time.
 *
 * <p>Only the columns asked for are turned into numbers.
 */
final class PlainTable {

    private static final int BUFFER = 1 << 20;
    private static final int SKIP = -1;
    private static final int TIME = -2;
    private static final int COPY = -3;

    private final TableLayout layout;
    private final CheckedRows rows;
    private final LastRow lastRow;
    private final Faults faults;
    private final boolean blanks;
    private final byte delimiter;
    private final boolean fast;
    private final int[] slots;
    private final double[] values;

    private final byte[] buffer = new byte[BUFFER + 1];
    private int next;
    private int limit;
    private boolean ended;
    private boolean closed;
    private long line;

    private double time;
    private int timeFrom;
    private int timeTo;
    private String wrong;
    private int wrongColumn;
    private boolean copyDiffers;
    private int lastLength;

    PlainTable(TableLayout layout, List<Signal> chosen, CheckedRows rows) {
        this.layout = layout;
        this.rows = rows;
        faults = rows.faults();
        lastRow = new LastRow(rows);
        blanks = layout.delimiter() == Cells.BLANKS;
        delimiter = (byte) layout.delimiter();
        fast = layout.numbers() == NumberText.POINT;
        values = new double[chosen.size()];
        slots = new int[layout.columns()];
        Arrays.fill(slots, SKIP);
        for (int i = 0; i < chosen.size(); i++) {
            slots[chosen.get(i).column()] = i;
        }
        layout.copies().forEach(column -> slots[column] = COPY);
        slots[layout.scale().column()] = TIME;
    }

    void read(InputStream in) throws IOException {
        in.skipNBytes(layout.firstByte());
        line = layout.firstLine() - 1L;
        while (fill(in)) {
            while (nextLine()) {}
        }
        lastRow.end();
        if (layout.closedByTrailer() && !closed && !rows.severalRuns()) {
            rows.remark(
                    Remark.spoiling(faults.file() + ": the closing line of the simulator is missing: run aborted?"));
        }
    }

    /** Moves the unread rest to the front and reads on; false at the end. */
    private boolean fill(InputStream in) throws IOException {
        if (ended) {
            return false;
        }
        System.arraycopy(buffer, next, buffer, 0, limit - next);
        limit -= next;
        next = 0;
        if (limit == BUFFER) {
            throw faults.at(rows.place(line + 1), "longer than " + BUFFER + " characters", "");
        }
        int got = readOrTorn(in);
        ended = got < 0;
        limit += Math.max(0, got);
        buffer[limit] = '\n';
        return true;
    }

    private int readOrTorn(InputStream in) throws IOException {
        try {
            return in.read(buffer, limit, BUFFER - limit);
        } catch (EOFException e) {
            rows.remark(Remark.spoiling(faults.file() + ": the packed file ends early, file incomplete"));
            return -1;
        }
    }

    /** Reads one line; false when its end is not in the buffer. */
    private boolean nextLine() {
        int start = next;
        if (start == limit && ended) {
            return false;
        }
        wrong = null;
        copyDiffers = false;
        int cells = blanks ? cellsBetweenBlanks(start) : cellsBetweenDelimiters(start);
        if (cells < 0) {
            next = start;
            return false;
        }
        boolean whole = !(ended && next > limit);
        int end = Math.min(next, limit);
        line++;
        take(start, end, cells, whole);
        next = end;
        return true;
    }

    private int cellsBetweenDelimiters(int start) {
        final byte[] b = buffer;
        final byte mark = delimiter;
        int p = start;
        int cell = 0;
        while (true) {
            int from = p;
            byte c = b[p];
            while (c != mark && c != '\n' && c != '\r') {
                c = b[++p];
            }
            if (c != mark && !endsHere(p)) {
                return -1;
            }
            cell(cell++, from, p);
            if (c != mark) {
                lastLength = p - from;
                return cell;
            }
            p++;
        }
    }

    private int cellsBetweenBlanks(int start) {
        final byte[] b = buffer;
        int p = start;
        int cell = 0;
        while (true) {
            byte c = b[p];
            while (c == ' ' || c == '\t') {
                c = b[++p];
            }
            int from = p;
            while (c != ' ' && c != '\t' && c != '\n' && c != '\r') {
                c = b[++p];
            }
            boolean end = c == '\n' || c == '\r';
            if (end && !endsHere(p)) {
                return -1;
            }
            if (p > from) {
                cell(cell++, from, p);
                lastLength = p - from;
            }
            if (end) {
                return cell;
            }
        }
    }

    /** Whether the line really ends at this place; sets the start of the next line. */
    private boolean endsHere(int p) {
        if (p == limit) {
            next = p + 1;
            return ended;
        }
        if (buffer[p] == '\r' && p + 1 == limit && !ended) {
            return false;
        }
        next = buffer[p] == '\r' && p + 1 < limit && buffer[p + 1] == '\n' ? p + 2 : p + 1;
        return true;
    }

    private void cell(int column, int from, int to) {
        int slot = column < slots.length ? slots[column] : SKIP;
        if (slot >= 0) {
            values[slot] = number(column, from, to);
        } else if (slot == TIME) {
            time = number(column, from, to);
            timeFrom = from;
            timeTo = to;
        } else if (slot == COPY && !Arrays.equals(buffer, timeFrom, timeTo, buffer, from, to)) {
            copyDiffers = true;
        }
    }

    private double number(int column, int from, int to) {
        if (fast && looksPlain(from, to)) {
            try {
                return JavaDoubleParser.parseDouble(buffer, from, to - from);
            } catch (NumberFormatException e) {
                return unusual(column, from, to);
            }
        }
        return unusual(column, from, to);
    }

    /** Whether a cell ends like a decimal number; the parser would take hexadecimal ones and a closing f or d too. */
    private boolean looksPlain(int from, int to) {
        if (to <= from) {
            return false;
        }
        byte last = buffer[to - 1];
        boolean decimal = (last >= '0' && last <= '9') || last == '.';
        boolean hexadecimal = to - from > 2 && (isX(buffer[from + 1]) || isX(buffer[from + 2]));
        return decimal && !hexadecimal;
    }

    private static boolean isX(byte b) {
        return (b | 0x20) == 'x';
    }

    /** A cell that is no plain number: quoted, with a scale letter, with blanks around, or none at all. */
    private double unusual(int column, int from, int to) {
        String text = new String(buffer, from, to - from, StandardCharsets.UTF_8).strip();
        String bare = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"")
                ? text.substring(1, text.length() - 1)
                : text;
        double number = layout.numbers().value(bare);
        if (Double.isNaN(number) && wrong == null) {
            wrong = bare;
            wrongColumn = column;
        }
        return number;
    }

    private void take(int start, int end, int cells, boolean whole) {
        if (cells == layout.columns() && wrong == null && !copyDiffers && !closed) {
            lastRow.another();
            boolean cut = !whole && lastRow.cut(lastLength);
            if (cut) {
                lastRow.torn(line, "last number cut short");
                return;
            }
            lastRow.whole(lastLength);
            rows.row(line, time, values);
        } else {
            irregular(new String(buffer, start, end - start, StandardCharsets.UTF_8).strip(), cells);
        }
    }

    private void irregular(String text, int cells) {
        if (text.isEmpty() || text.replaceAll("\\s+", "").replaceFirst("^#", "").equals(layout.header())) {
            return;
        }
        lastRow.another();
        if (TableLayout.trailer(text)) {
            closed = true;
        } else if (cells < layout.columns()) {
            lastRow.torn(line, cells + " of " + layout.columns() + " fields");
        } else if (cells > layout.columns()) {
            throw faults.at(rows.place(line), cells + " fields where " + layout.columns() + " are expected", "");
        } else if (closed) {
            throw faults.at(rows.place(line), "a row of numbers behind the closing line", "");
        } else if (copyDiffers) {
            throw faults.copiesDiffer(rows.place(line));
        } else {
            notANumber();
        }
    }

    private void notANumber() {
        String name = layout.name(wrongColumn);
        if (NumberText.notFinite(wrong)) {
            throw faults.notFinite(rows.place(line), name, wrong);
        }
        lastRow.torn(line, "'" + wrong + "' in column '" + name + "' is not a number");
    }
}
