package lampproof.lint.netlist;

/**
 * One line of a netlist file, as it was read.
 *
 * @param file the file's name as the user knows it
 * @param number the line's number, from 1 [-]
 * @param text the whole line without its line end
 */
public record SourceLine(String file, int number, String text) {

    /** The part of this line from one column to another, both counted from 0; cut to the line. */
    public Place place(int from, int to) {
        int start = Math.max(0, Math.min(from, text.length()));
        return new Place(this, start, Math.max(start, Math.min(to, text.length())));
    }

    /** The whole line as a place, without the blanks around it. */
    public Place whole() {
        int from = text.length() - text.stripLeading().length();
        return place(from, text.stripTrailing().length());
    }
}
