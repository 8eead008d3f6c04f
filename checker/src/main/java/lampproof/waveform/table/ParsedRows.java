package lampproof.waveform.table;

import java.util.Arrays;

/** The numbers of a block of lines, column by column, the time first. */
final class ParsedRows {

    private static final int FIRST_ROWS = 1 << 13;

    private final double[][] columns;
    private int count;

    /**
     * Allocates space.
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

    /** Removes all rows and keeps the allocated space. */
    ParsedRows cleared() {
        count = 0;
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

    /** Ends a row. */
    void end() {
        count++;
    }
}
