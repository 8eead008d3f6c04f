package lampproof.lint.netlist;

import java.util.regex.Pattern;

/** File names as they stand in a deck. */
public final class FileNames {

    /** Marks in a name that ngspice reads as they are, in {@code .include} and {@code .lib} as well as in commands. */
    private static final String MARKS = "()\\[\\]@%#";

    private static final Pattern READ = path("\\.?+", MARKS + ",\\&");
    private static final Pattern WRITTEN = path("", MARKS);
    private static final Pattern INSIDE = path("\\.?+", MARKS + ",\\&!=\\^|*?;<>");

    private FileNames() {}

    private static Pattern path(String start, String marks) {
        String letters = "\\p{L}\\p{N}_" + marks;
        String part = start + "[" + letters + "-][" + letters + ".+-]*+";
        return Pattern.compile("(?:\\./)?+" + part + "(?:/" + part + "){0,20}");
    }

    /**
     * Whether the name of an included file may lead out of the deck's folder: absolute, in a home folder, upwards, put
     * together only when the deck runs, or with a mark that means something to the simulator. Quotes around the name and
     * blanks in it are no such marks.
     */
    public static boolean mayLeadOutside(String path) {
        return !matches(READ, path);
    }

    /** Whether a command writes to the file of this name and to no other; no name of a hidden file is one. */
    public static boolean isWrittenAsNamed(String path) {
        return matches(WRITTEN, path);
    }

    /** Whether a name stays in the deck's folder however the simulator reads the marks in it. */
    public static boolean staysInside(String path) {
        return matches(INSIDE, path);
    }

    private static boolean matches(Pattern form, String path) {
        return form.matcher(unquoted(path).replaceAll("(?<=\\S) {1,9}(?=[^\\s/])", "_"))
                .matches();
    }

    /** The name without the quotes around it. */
    public static String unquoted(String path) {
        boolean quoted = path.length() >= 2
                && "\"'".indexOf(path.charAt(0)) >= 0
                && path.charAt(path.length() - 1) == path.charAt(0);
        return quoted ? path.substring(1, path.length() - 1) : path;
    }

    /** The name of a file that stands beside the deck, told the way the deck's own name is. */
    static String beside(String deck, String file) {
        return deck.substring(0, deck.length() - last(deck).length()) + file;
    }

    /** The name without the folders before it. */
    static String last(String file) {
        return file.substring(1 + Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')));
    }
}
