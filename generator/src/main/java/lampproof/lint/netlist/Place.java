package lampproof.lint.netlist;

/**
 * A stretch of one line of a netlist file.
 *
 * @param line the line
 * @param from first column, counted from 0 [-]
 * @param to column behind the last one, counted from 0 [-]
 */
public record Place(SourceLine line, int from, int to) {

    /** The text at this place. */
    public String text() {
        return line.text().substring(from, to);
    }
}
