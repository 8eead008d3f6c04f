package lampproof.waveform;

import lampproof.fault.UserFault;

/**
 * Distinguishes a truncated final row from damage in the middle of a file.
 *
 * <p>A row with too few fields, or with half a number, is accepted only as the final one: the rows before it may be
 * shown, but the file is incomplete. A final field without a line end may be half a number. It is complete if all
 * fields above it have the same number of decimals, and truncated if it has fewer; if they vary, its row is omitted.
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

    /** Notes that a further row follows: damage found before is in the middle of the file. */
    public void rowFollows() {
        if (damage != null) {
            throw damage;
        }
    }

    /** Notes a row that is damaged as a truncated final row would be. */
    public void truncated(long row, String how) {
        number = row;
        what = how;
        damage = rows.faults().at(rows.place(row), how, "");
    }

    /** Notes a line that is not a row, such as a sentence or empty cells after a table; a fault if a row follows. */
    public void noRow(long line, UserFault inTheMiddle) {
        if (!behind) {
            rowFollows();
            number = line;
            damage = inTheMiddle;
            behind = true;
        }
    }

    /** Notes the last field of a row that has a line end. */
    public void terminated(String lastField) {
        int now = places(lastField);
        fixed = fixed && (places < 0 || now == places);
        places = now;
    }

    /** Whether a final field without a line end is complete; otherwise notes the truncated or omitted row. */
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

    /** Characters after the decimal mark of a number; after its sign if it has no mark. */
    private static int places(String field) {
        int mark = Math.max(field.lastIndexOf('.'), field.lastIndexOf(','));
        int sign = field.startsWith("-") || field.startsWith("+") ? 0 : -1;
        return field.length() - 1 - Math.max(mark, sign);
    }
}
