package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;

/**
 * The words behind a name, sorted into plain words and named values.
 *
 * @param plain the words that are not part of a {@code name=value}, without separators
 * @param named the named values
 */
record Arguments(List<Word> plain, List<Parameter> named) {

    static Arguments of(List<Word> words) {
        List<Word> plain = new ArrayList<>();
        List<Parameter> named = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            if (isNamed(words, at)) {
                named.add(new Parameter(words.get(at), words.get(at + 2)));
                at += 2;
            } else if (!words.get(at).isSeparator()) {
                plain.add(words.get(at));
            }
        }
        return new Arguments(plain, named);
    }

    private static boolean isNamed(List<Word> words, int at) {
        return at + 2 < words.size()
                && words.get(at + 1).text().equals("=")
                && !words.get(at).isSeparator()
                && !words.get(at + 2).isSeparator();
    }

    /** The plain words from {@code index} on; none when there are fewer. */
    List<Word> from(int index) {
        return plain.subList(Math.min(index, plain.size()), plain.size());
    }

    /** The first {@code count} plain words, or all when there are fewer. */
    List<Word> first(int count) {
        return plain.subList(0, Math.min(count, plain.size()));
    }
}
