package lampproof.spec;

import java.util.function.Function;

/**
 * The word chosen for a {@link Choice}.
 *
 * @param text the word
 */
public record Word(String text) implements Setting {

    @Override
    public <T> T map(Function<Amount, T> ofAmount, Function<String, T> ofWord) {
        return ofWord.apply(text);
    }
}
