package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;

/** Cuts the text of a statement into words; an expression in braces or quotes is one word. */
final class Words {

    private static final String SEPARATORS = "(),=";

    /**
     * Where a word stands in the text.
     *
     * @param from its first character, counted from 0
     * @param to the character behind it
     */
    record Range(int from, int to) {}

    private Words() {}

    /** Words of an element or directive, with each of {@code ( ) , =} as a word of its own. */
    static List<Range> ofCircuit(String text) {
        return cut(text, SEPARATORS);
    }

    /** Words of a command: only blanks part them. */
    static List<Range> ofCommand(String text) {
        return cut(text, "");
    }

    private static List<Range> cut(String text, String separators) {
        List<Range> words = new ArrayList<>();
        for (int at = 0; at < text.length(); ) {
            int end = Character.isWhitespace(text.charAt(at)) ? at : end(text, at, separators);
            if (end > at) {
                words.add(new Range(at, end));
            }
            at = Math.max(end, at + 1);
        }
        return List.copyOf(words);
    }

    private static int end(String text, int from, String separators) {
        if (separators.indexOf(text.charAt(from)) >= 0) {
            return from + 1;
        }
        int at = from;
        while (at < text.length() && !Character.isWhitespace(text.charAt(at)) && !isOneOf(separators, text, at)) {
            at = behind(text, at);
        }
        return at;
    }

    private static boolean isOneOf(String separators, String text, int at) {
        return separators.indexOf(text.charAt(at)) >= 0;
    }

    private static int behind(String text, int at) {
        return switch (text.charAt(at)) {
            case '{' -> behindBrace(text, at);
            case '\'', '"' -> behindQuote(text, at);
            default -> at + 1;
        };
    }

    private static int behindBrace(String text, int from) {
        int depth = 0;
        for (int at = from; at < text.length(); at++) {
            char letter = text.charAt(at);
            depth += letter == '{' ? 1 : letter == '}' ? -1 : 0;
            if (depth == 0) {
                return at + 1;
            }
        }
        return text.length();
    }

    private static int behindQuote(String text, int from) {
        int close = text.indexOf(text.charAt(from), from + 1);
        return close < 0 ? text.length() : close + 1;
    }
}
