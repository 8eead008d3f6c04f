package lampproof.lint.netlist;

import java.util.List;
import java.util.Set;

/**
 * A line that begins with a dot and defines neither a model nor a subcircuit nor a parameter.
 *
 * @param keyword its first word, with the dot
 * @param words the words behind it, separators included
 * @param statement the statement at fault
 */
public record Directive(Word keyword, List<Word> words, Statement statement) {
    public Directive {
        words = List.copyOf(words);
    }

    /** Whether its first word is one of {@code keywords}, letter case ignored. */
    public boolean isOneOf(Set<String> keywords) {
        return keywords.contains(keyword.lower());
    }
}
