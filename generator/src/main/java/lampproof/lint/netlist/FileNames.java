package lampproof.lint.netlist;

import java.util.regex.Pattern;

/** File names as they stand in a deck. */
public final class FileNames {

    private static final String PART = "[\\p{L}\\p{N}_-][\\p{L}\\p{N}_.+-]*+";
    private static final Pattern PLAIN = Pattern.compile("(?:\\./)?+" + PART + "(?:/" + PART + "){0,20}");

    private FileNames() {}

    /**
     * Whether a file name may lead out of the deck's folder: absolute, in a home folder, upwards, hidden, put together only
     * when the deck runs, or with a mark that means something to the simulator. Quotes around the name and blanks in it are
     * no such marks.
     */
    public static boolean mayLeadOutside(String path) {
        return !PLAIN.matcher(unquoted(path).replaceAll("(?<=\\S) {1,9}(?=[^\\s/])", "_"))
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
