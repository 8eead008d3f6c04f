package lampproof.waveform.table;

import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/**
 * How large a table will be that a simulator is about to write.
 *
 * @param rows number of rows
 * @param columns number of columns
 * @param characters characters to a cell, its blanks counted
 */
public record TableSize(long rows, int columns, int characters) {

    private static final int AROUND_DIGITS = 8;

    /**
     * The size of an ngspice table.
     *
     * @param length time that is saved [s]
     * @param step largest step [s]
     * @param signals number of signals
     * @param singleScale whether the time column is written once only
     * @param digits digits after the point
     */
    public static TableSize ofNgspice(double length, double step, int signals, boolean singleScale, int digits) {
        int columns = singleScale ? signals + 1 : 2 * signals;
        return new TableSize(Math.round(length / step), columns, digits + AROUND_DIGITS);
    }

    /** Size on the disk [bytes]. */
    public double bytes() {
        return (double) rows * columns * characters;
    }

    /** The size in words, as in {@code 4 000 000 rows x 24 columns x 16 characters, about 1.54 GB}. */
    public String text() {
        return PlainNumber.grouped(rows) + " rows x " + columns + " columns x " + characters + " characters, about "
                + Engineering.rounded(bytes(), "B");
    }
}
