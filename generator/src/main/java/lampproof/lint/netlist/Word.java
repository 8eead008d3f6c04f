package lampproof.lint.netlist;

import java.util.Locale;

/**
 * One word of a statement: a name, a node, a value, or a separator.
 *
 * @param text the word as written
 * @param offset where it begins in its statement's text, from 0 [-]
 * @param place its place in its file
 */
public record Word(String text, int offset, Place place) {

    /** The word as the simulator reads it, letter case ignored. */
    public String lower() {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Whether the word is {@code other}, letter case ignored. */
    public boolean is(String other) {
        return text.equalsIgnoreCase(other);
    }

    /** Whether the word stands where a number is meant: it begins as a number, an expression or a placeholder does. */
    public boolean looksLikeValue() {
        return !text.isEmpty() && "0123456789+-.{'\"@$<[".indexOf(text.charAt(0)) >= 0;
    }

    boolean isSeparator() {
        return text.length() == 1 && "(),=".contains(text);
    }
}
