package lampproof.waveform;

import java.util.Arrays;

/** The numbers of a block of rows, row by row, the time first. */
final class ParsedRows {

    private static final int FIRST_ROWS = 1 << 13;

    private final int width;
    private double[] numbers;
    private int count;
    private int lastLength = -1;
    private int lengthBefore = -1;

    /**
     * Makes room.
     *
     * @param width numbers to a row
     */
    ParsedRows(int width) {
        this.width = width;
        numbers = new double[FIRST_ROWS * width];
    }

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

    /** Forgets all rows and keeps their room. */
    ParsedRows cleared() {
        count = 0;
        lastLength = -1;
        lengthBefore = -1;
        return this;
    }

    /** Begins a row; the place of its first number. */
    int begin() {
        int at = count * width;
        if (at + width > numbers.length) {
            numbers = Arrays.copyOf(numbers, 2 * numbers.length + width);
        }
        return at;
    }

    /** Ends a row whose last cell has a length. */
    void end(int length) {
        lengthBefore = lastLength;
        lastLength = length;
        count++;
    }
}
