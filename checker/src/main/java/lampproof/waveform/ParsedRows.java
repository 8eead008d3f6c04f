package lampproof.waveform;

import java.util.Arrays;

/** The numbers of a block of lines, column by column, the time first. */
final class ParsedRows {

    private static final int FIRST_ROWS = 1 << 13;

    private final double[][] columns;
    private int count;
    private int lastLength = -1;
    private int lengthBefore = -1;

    /**
     * Makes room.
     *
     * @param width numbers to a row
     */
    ParsedRows(int width) {
        columns = new double[width][FIRST_ROWS];
    }

    /** The columns; only the first {@link #count} numbers of each count. */
    double[][] columns() {
        return columns;
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

    /** Forgets all rows and keeps their room. */
    ParsedRows cleared() {
        count = 0;
        lastLength = -1;
        lengthBefore = -1;
        return this;
    }

    /** Begins a row; its place in the columns. */
    int begin() {
        if (count == columns[0].length) {
            for (int i = 0; i < columns.length; i++) {
                columns[i] = Arrays.copyOf(columns[i], 2 * count);
            }
        }
        return count;
    }

    /** Ends a row whose last cell has a length. */
    void end(int length) {
        lengthBefore = lastLength;
        lastLength = length;
        count++;
    }
}
