package lampproof.lint.netlist;

/**
 * A line with the simulator's view of it: which part is code, and to what it belongs.
 *
 * @param source the line as read
 * @param part what the line belongs to
 * @param continued whether the line goes on with the statement before it (a plus sign in front)
 * @param from first column of the code, counted from 0 [-]
 * @param to column behind the code, where the end-of-line comment begins [-]
 */
public record DeckLine(SourceLine source, Part part, boolean continued, int from, int to) {

    /** What a line belongs to. */
    public enum Part {
        /** The first line of a deck, which is never code. */
        TITLE,
        /** Elements and directives. */
        CIRCUIT,
        /** Commands for the simulator's interpreter. */
        CONTROL
    }

    /** The code of the line; empty for comments and blank lines. */
    public String code() {
        return source.text().substring(from, to);
    }

    /** Whether the line holds no code. */
    public boolean isBlank() {
        return code().isBlank();
    }
}
