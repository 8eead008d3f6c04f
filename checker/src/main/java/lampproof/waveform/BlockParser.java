package lampproof.waveform;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.Arrays;

/**
 * Turns a block of regular lines into numbers, as fast as the bytes allow.
 *
 * <p>It keeps no state, so that blocks can be parsed side by side. Anything but a plain row of plain numbers makes it
 * give the whole block up; {@link LineReader} then goes through the block line by line.
 */
final class BlockParser {

    private final TableCells cells;
    private final byte delimiter;
    private final boolean blanks;

    BlockParser(TableCells cells, char delimiter) {
        this.cells = cells;
        this.delimiter = (byte) delimiter;
        blanks = delimiter == Cells.BLANKS;
    }

    /** The numbers of a block of rows. */
    static final class Rows {
        private double[] numbers;
        private int count;
        private int lastLength = -1;
        private int lengthBefore = -1;

        private Rows(int capacity) {
            numbers = new double[capacity];
        }

        /** The numbers, row by row, the time first. */
        double[] numbers() {
            return numbers;
        }

        int count() {
            return count;
        }

        /** Length of the last cell of the last row, its sign not counted. */
        int lastLength() {
            return lastLength;
        }

        /** Length of the last cell of the row before. */
        int lengthBefore() {
            return lengthBefore;
        }

        private int begin(int width) {
            int at = count * width;
            if (at + width > numbers.length) {
                numbers = Arrays.copyOf(numbers, numbers.length + numbers.length / 2 + width);
            }
            return at;
        }

        private void end(int length) {
            lengthBefore = lastLength;
            lastLength = length;
            count++;
        }
    }

    /** The numbers; null when the block is not regular. */
    Rows parse(TextBlocks.Block block) {
        if (!block.terminated()) {
            return null;
        }
        byte[] b = block.bytes();
        int shortest = 2 * cells.columns();
        Rows rows = new Rows(Math.min(block.length() / shortest + 1, 1 << 14) * cells.width());
        int next = 0;
        while (next < block.length()) {
            next = blanks ? rowBetweenBlanks(b, next, rows) : row(b, next, rows);
            if (next < 0) {
                return null;
            }
        }
        return rows;
    }

    /** Parses one row; the place of the next, negative when the row is not regular. */
    private int row(byte[] b, int start, Rows rows) {
        final byte mark = delimiter;
        final int at = rows.begin(cells.width());
        int column = 0;
        int from = start;
        while (true) {
            int to = from;
            byte c = b[to];
            while (c != mark && c != '\n' && c != '\r') {
                c = b[++to];
            }
            if (!cell(b, from, to, column++, rows.numbers, at)) {
                return -1;
            }
            if (c != mark) {
                rows.end(signless(b, from, to));
                return column == cells.columns() ? behind(b, to) : -1;
            }
            from = to + 1;
        }
    }

    private int rowBetweenBlanks(byte[] b, int start, Rows rows) {
        final int at = rows.begin(cells.width());
        int column = 0;
        int from = start;
        int length = 0;
        while (true) {
            byte c = b[from];
            while (c == ' ' || c == '\t') {
                c = b[++from];
            }
            if (c == '\n' || c == '\r') {
                rows.end(length);
                return column == cells.columns() ? behind(b, from) : -1;
            }
            int to = from;
            while (c != ' ' && c != '\t' && c != '\n' && c != '\r') {
                c = b[++to];
            }
            if (!cell(b, from, to, column++, rows.numbers, at)) {
                return -1;
            }
            length = signless(b, from, to);
            from = to;
        }
    }

    private boolean cell(byte[] b, int start, int end, int column, double[] numbers, int at) {
        int slot = cells.slot(column);
        if (slot == TableCells.SKIPPED) {
            return true;
        }
        int from = start;
        while (b[from] == ' ') {
            from++;
        }
        int to = end;
        while (to > from && b[to - 1] == ' ') {
            to--;
        }
        if (!plain(b, from, to)) {
            return false;
        }
        try {
            double number = JavaDoubleParser.parseDouble(b, from, to - from);
            if (slot == TableCells.COPY) {
                return number == numbers[at];
            }
            numbers[at + slot] = number;
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /** Whether a cell looks like a decimal number at both ends; the parser takes blanks, hexadecimal and 1.5f too. */
    private static boolean plain(byte[] b, int from, int to) {
        if (to <= from) {
            return false;
        }
        byte first = b[from];
        byte last = b[to - 1];
        boolean decimal =
                (digit(first) || first == '-' || first == '+' || first == '.') && (digit(last) || last == '.');
        return decimal && (to - from < 3 || ((b[from + 1] | 0x20) != 'x' && (b[from + 2] | 0x20) != 'x'));
    }

    private static boolean digit(byte b) {
        return b >= '0' && b <= '9';
    }

    /** Behind the line end at a place; a line feed after a carriage return belongs to it. */
    private static int behind(byte[] b, int end) {
        return b[end] == '\r' && b[end + 1] == '\n' ? end + 2 : end + 1;
    }

    private static int signless(byte[] b, int from, int to) {
        return to > from && (b[from] == '-' || b[from] == '+') ? to - from - 1 : to - from;
    }
}
