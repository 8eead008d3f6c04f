package lampproof.lint.netlist;

import java.util.regex.Pattern;

/** File names as they stand in a deck. */
public final class FileNames {

    private static final Pattern OUTSIDE =
            Pattern.compile("[/\\\\~].*|[A-Za-z]:.*|(.*[/\\\\])?\\.\\.([/\\\\].*)?|.*[$`].*", Pattern.DOTALL);

    private FileNames() {}

    /**
     * Whether a file name may lead out of the deck's folder: absolute, in a home folder, upwards, or put together only
     * when the deck runs.
     */
    public static boolean leadsOutside(String path) {
        return OUTSIDE.matcher(unquoted(path)).matches();
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
