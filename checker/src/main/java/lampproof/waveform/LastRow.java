package lampproof.waveform;

import lampproof.fault.UserFault;

/**
 * Tells a torn last row from damage in the middle of a file.
 *
 * <p>A row with too few fields, or with half a number, is forgiven only as the very last: the rows before it may be
 * looked at, but the file is incomplete.
 */
final class LastRow {

    private final CheckedRows rows;
    private UserFault damage;
    private long number;
    private String what;
    private int shortest = Integer.MAX_VALUE;
    private int length = -1;
    private int lengthBefore = -1;

    LastRow(CheckedRows rows) {
        this.rows = rows;
    }

    /** Another line follows: damage found before was in the middle. */
    void another() {
        if (damage != null) {
            throw damage;
        }
    }

    /** The row with this number is damaged in a way that a torn last row would be. */
    void torn(long row, String how) {
        number = row;
        what = how;
        damage = rows.faults().at(rows.place(row), how, "");
    }

    /** A whole row ended with a field of so many characters. */
    void whole(int lastFieldLength) {
        lengthBefore = length;
        length = lastFieldLength;
        shortest = Math.min(shortest, lastFieldLength);
    }

    /** Whether a last field without a line end is shorter than any above it, or has none above to compare with. */
    boolean cut(int lastFieldLength) {
        return length < 0 || (lengthBefore == length && lastFieldLength < shortest);
    }

    void end() {
        if (damage != null) {
            rows.remark(Remark.spoiling(rows.faults().file() + ", " + rows.place(number) + ": " + what
                    + ": torn last row, file incomplete"));
        }
    }
}
