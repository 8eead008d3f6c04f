package lampproof.lint.rule;

import lampproof.lint.netlist.Place;

/**
 * One thing that is wrong in a netlist.
 *
 * @param rule the name of the rule that found it
 * @param severity how bad it is
 * @param place file, line and columns of the fault
 * @param what what is wrong, in one clause
 * @param why why it matters
 * @param write what to write instead
 */
public record LintFinding(String rule, Severity severity, Place place, String what, String why, String write) {

    /** Longest part of a line that is shown [characters]. */
    private static final int WIDTH = 120;

    public LintFinding {
        what = printable(what);
        why = printable(why);
        write = printable(write);
    }

    /** The name of the file in which the fault stands. */
    public String file() {
        return place.line().file();
    }

    /** The number of the line in which the fault stands, from 1 [-]. */
    public int lineNumber() {
        return place.line().number();
    }

    /** The line itself. */
    public String line() {
        return place.line().text();
    }

    /** Whether a simulation of the netlist cannot be trusted. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The finding in full: place, the line with a mark under the fault, why it matters, what to write. */
    public String text() {
        String head = printable(file()) + ":" + lineNumber() + ": " + severity.word() + ": " + what + " [" + rule + "]";
        return String.join("\n", head, shown(), mark(), "  Why: " + why, "  Write: " + write);
    }

    private String shown() {
        int end = Math.min(line().length(), start() + WIDTH);
        return "  " + printable(line().substring(start(), end)).stripTrailing();
    }

    private String mark() {
        int length = Math.min(place.to(), start() + WIDTH) - place.from();
        return "  " + " ".repeat(place.from() - start()) + "^".repeat(Math.max(1, length));
    }

    /** First column shown: of a long line only the stretch round the fault. */
    private int start() {
        return place.to() <= WIDTH ? 0 : Math.max(0, place.from() - WIDTH / 4);
    }

    /** A stranger's line must not steer the reader's terminal. */
    private static String printable(String text) {
        return text.replace('\t', ' ').replaceAll("\\p{Cntrl}", "?");
    }
}
