package lampproof.waveform;

import lampproof.fault.UserFault;

/**
 * Tells a torn last row from damage in the middle of a file.
 *
 * <p>A row with too few fields, or with half a number, is forgiven only as the very last: the rows before it may be
 * looked at, but the file is incomplete. A last field without a line end may be half a number. It is whole when all
 * fields above it have as many digits behind the mark, and torn when it has fewer; where they vary nothing tells, and
 * its row is left out.
 */
public final class TruncationCheck {

    private final CheckedRows rows;
    private UserFault damage;
    private long number;
    private String what;
    private boolean behind;
    private int places = -1;
    private boolean fixed = true;

    public TruncationCheck(CheckedRows rows) {
        this.rows = rows;
    }

    /** Another line follows: damage found before was in the middle. */
    public void rowFollows() {
        if (damage != null) {
            throw damage;
        }
    }

    /** The row with this number is damaged in a way that a torn last row would be. */
    public void truncated(long row, String how) {
        number = row;
        what = how;
        damage = rows.faults().at(rows.place(row), how, "");
    }

    /** A line that is no row, such as the sentence or the empty cells behind a table; a fault where a row follows. */
    public void noRow(long line, UserFault inTheMiddle) {
        if (!behind) {
            rowFollows();
            number = line;
            damage = inTheMiddle;
            behind = true;
        }
    }

    /** A row with a line end behind it ended with this field. */
    public void terminated(String lastField) {
        int now = places(lastField);
        fixed = fixed && (places < 0 || now == places);
        places = now;
    }

    /** Whether a last field without a line end is known to be whole; when it is not, says what becomes of its row. */
    public boolean complete(long row, String lastField) {
        int now = places(lastField);
        boolean proven = fixed && now == places;
        if (fixed && now < places) {
            truncated(row, "last number cut short");
        } else if (!proven) {
            rows.remark(Remark.note(rows.faults().file() + ", " + rows.place(row)
                    + ": the last line has no end, its last number may be cut short: row left out"));
        }
        return proven;
    }

    public void end() {
        String place = rows.faults().file() + ", " + rows.place(number) + ": ";
        if (behind) {
            rows.remark(Remark.note(place + "no row of numbers from here on, left out"));
        } else if (damage != null) {
            rows.remark(Remark.defect(place + what + ": torn last row, file incomplete"));
        }
    }

    /** Characters behind the decimal mark of a number; those behind its sign where it has no mark. */
    private static int places(String field) {
        int mark = Math.max(field.lastIndexOf('.'), field.lastIndexOf(','));
        int sign = field.startsWith("-") || field.startsWith("+") ? 0 : -1;
        return field.length() - 1 - Math.max(mark, sign);
    }
}
