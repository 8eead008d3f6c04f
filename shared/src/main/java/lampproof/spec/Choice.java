package lampproof.spec;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A name whose value is a word.
 *
 * @param name the dotted name
 * @param words the words to choose from; empty when every part name is allowed
 * @param meaning what it means, in one clause
 */
public record Choice(String name, List<String> words, String meaning) implements Entry {

    private static final Pattern PART_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ._/-]{0,39}");

    public Choice {
        words = List.copyOf(words);
    }

    /** Whether the word may be chosen. */
    public boolean holds(String word) {
        return words.isEmpty() ? PART_NAME.matcher(word).matches() : words.contains(word);
    }

    @Override
    public String allowed() {
        return words.isEmpty() ? "a part name in ASCII" : String.join(", ", words);
    }
}
