package lampproof.lint.netlist;

import java.util.Locale;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** How much of a stranger's deck is read: far beyond any real lamp, far below what would hurt. */
final class Limits {

    /** Largest size of one file, and of a deck with all that it includes [characters]. */
    static final int SIZE = 8_000_000;

    /** Most lines of one file [-]. */
    static final int LINES = 200_000;

    /** Longest line [characters]. */
    static final int LINE_LENGTH = 100_000;

    /** Deepest nesting of included files, and of subcircuits inside subcircuits [-]. */
    static final int DEPTH = 20;

    /** Most included files [-]. */
    static final int FILES = 200;

    /** Most elements of the flattened circuit [-]. */
    static final int ELEMENTS = 100_000;

    private Limits() {}

    static void checkSize(long characters, String file) {
        if (characters > SIZE) {
            throw tooLarge("the netlist is too large", file, characters + " characters", SIZE + " characters");
        }
    }

    static void checkLines(String[] lines, String file) {
        if (lines.length > LINES) {
            throw tooLarge("the netlist has too many lines", file, lines.length + " lines", LINES + " lines");
        }
        for (int index = 0; index < lines.length; index++) {
            if (lines[index].length() > LINE_LENGTH) {
                String place = String.format(Locale.ROOT, "%s:%d", file, index + 1);
                String found = lines[index].length() + " characters";
                throw tooLarge("the line is too long", place, found, LINE_LENGTH + " characters");
            }
        }
    }

    static void checkNesting(int depth, String place) {
        if (depth > DEPTH) {
            throw tooLarge("subcircuits are nested too deep", place, depth + " levels", DEPTH + " levels");
        }
    }

    static void checkElements(int elements, String file) {
        if (elements > ELEMENTS) {
            String found = "more than " + ELEMENTS + " elements";
            throw tooLarge("the flattened circuit is too large", file, found, ELEMENTS + " elements");
        }
    }

    private static UserFault tooLarge(String what, String place, String found, String allowed) {
        return UserFault.badInput(new Finding(what, place, found, "at most " + allowed, "cut the deck into parts"));
    }
}
