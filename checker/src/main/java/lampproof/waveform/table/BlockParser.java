package lampproof.waveform.table;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Turns a block of regular lines into numbers, as fast as the bytes allow.
 *
 * <p>It rejects a block with anything but plain rows of plain numbers; {@link LineReader} then reads the block line by
 * line. Blocks can be parsed in parallel, each by its own parser.
 *
 * <p>A number of up to 53 bits of digits and a power of ten of up to 22 is exact after one multiplication or division
 * (William D. Clinger, How to read floating point numbers accurately, PLDI 1990, section 2); the library reads all
 * others.
 */
final class BlockParser {

    private static final int IRREGULAR = -1;
    private static final int MOST_DIGITS = 18;
    private static final long MOST_EXACT = 1L << 53;
    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private final TableCells cells;
    private final byte delimiter;
    private final boolean blanks;
    private double number;

    BlockParser(TableCells cells, char delimiter) {
        this.cells = cells;
        this.delimiter = (byte) delimiter;
        blanks = delimiter == Cells.BLANKS;
    }

    /**
     * Turns a block into numbers.
     *
     * @param rows receives the rows
     * @return whether the block is regular
     */
    boolean parse(TextBlocks.Block block, ParsedRows rows) {
        if (!block.terminated()) {
            return false;
        }
        byte[] bytes = block.bytes();
        int next = 0;
        while (next < block.length()) {
            next = row(bytes, next, rows);
            if (next == IRREGULAR) {
                return false;
            }
        }
        return true;
    }

    /** Parses one row; the place of the next. */
    private int row(byte[] b, int start, ParsedRows rows) {
        final int at = rows.begin();
        final int columns = cells.columns();
        int p = blank(b, start);
        for (int column = 0; column < columns; column++) {
            int end = cell(b, p, cells.slot(column), rows, at);
            p = end == IRREGULAR ? IRREGULAR : behindCell(b, end, column + 1 < columns);
            if (p == IRREGULAR) {
                return IRREGULAR;
            }
        }
        rows.end();
        return behindLine(b, p);
    }

    private int cell(byte[] b, int from, int slot, ParsedRows rows, int at) {
        if (slot < TableCells.COPY) {
            int end = skipped(b, from);
            return slot == TableCells.EMPTY && end > from ? IRREGULAR : end;
        }
        int end = number(b, from);
        if (slot >= 0) {
            rows.columns()[slot][at] = number;
        } else if (number != rows.columns()[TableCells.TIME][at]) {
            return IRREGULAR;
        }
        return end;
    }

    private int skipped(byte[] b, int from) {
        int p = from;
        byte c = b[p];
        while (c != delimiter && c != '\n' && c != '\r' && c != '\t') {
            c = b[++p];
        }
        return p;
    }

    /** Reads the number at a place; the place after it. */
    private int number(byte[] b, int from) {
        int p = b[from] == '-' || b[from] == '+' ? from + 1 : from;
        long mantissa = 0;
        int first = p;
        int digit = b[p] - '0';
        while (digit >= 0 && digit <= 9) {
            mantissa = 10 * mantissa + digit;
            digit = b[++p] - '0';
        }
        int digits = p - first;
        int power = 0;
        if (b[p] == '.') {
            int point = p;
            digit = b[++p] - '0';
            while (digit >= 0 && digit <= 9) {
                mantissa = 10 * mantissa + digit;
                digit = b[++p] - '0';
            }
            power = point + 1 - p;
            digits -= power;
        }
        if (digits == 0) {
            return IRREGULAR;
        }
        if ((b[p] | 0x20) == 'e') {
            int sign = b[p + 1] == '-' || b[p + 1] == '+' ? 1 : 0;
            int exponent = 0;
            int start = p + 1 + sign;
            p = start;
            digit = b[p] - '0';
            while (digit >= 0 && digit <= 9 && p - start < MOST_DIGITS / 2) {
                exponent = 10 * exponent + digit;
                digit = b[++p] - '0';
            }
            if (p == start) {
                return IRREGULAR;
            }
            power += b[start - 1] == '-' ? -exponent : exponent;
        }
        number = digits <= MOST_DIGITS && mantissa <= MOST_EXACT && power < POWERS.length && -power < POWERS.length
                ? exact(b[from] == '-' ? -mantissa : mantissa, power, b[from] == '-')
                : JavaDoubleParser.parseDouble(b, from, p - from);
        return p;
    }

    private static double exact(long mantissa, int power, boolean minus) {
        if (mantissa == 0) {
            return minus ? -0.0 : 0.0;
        }
        return power < 0 ? mantissa / POWERS[-power] : mantissa * POWERS[power];
    }

    /** The start of the next cell, or the end of the line after the last one. */
    private int behindCell(byte[] b, int end, boolean more) {
        int p = blank(b, end);
        if (!more) {
            return b[p] == '\n' || b[p] == '\r' ? p : IRREGULAR;
        }
        if (blanks) {
            return p > end ? p : IRREGULAR;
        }
        return b[p] == delimiter ? blank(b, p + 1) : IRREGULAR;
    }

    private int blank(byte[] b, int from) {
        int p = from;
        while (b[p] == ' ' || (blanks && b[p] == '\t')) {
            p++;
        }
        return p;
    }

    /** The place after a line end; a line feed after a carriage return belongs to it. */
    private static int behindLine(byte[] b, int end) {
        return b[end] == '\r' && b[end + 1] == '\n' ? end + 2 : end + 1;
    }
}
