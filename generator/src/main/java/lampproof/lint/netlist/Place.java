package lampproof.lint.netlist;

/**
 * A stretch of one line of a netlist file.
 *
 * @param line the line
 * @param from first column, counted from 0 [-]
 * @param to column behind the last one, counted from 0 [-]
 */
public record Place(SourceLine line, int from, int to) {

    /** The part of a line from one column to another, both counted from 0 [-]; cut to the line. */
    public static Place of(SourceLine line, int from, int to) {
        int length = line.text().length();
        int start = Math.max(0, Math.min(from, length));
        return new Place(line, start, Math.max(start, Math.min(to, length)));
    }

    /** A whole line, without the blanks around it. */
    public static Place whole(SourceLine line) {
        String text = line.text();
        int from = text.length() - text.stripLeading().length();
        return of(line, from, text.stripTrailing().length());
    }

    /** The text at this place. */
    public String text() {
        return line.text().substring(from, to);
    }
}
