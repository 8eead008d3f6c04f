package lampproof.spec;

import java.util.Optional;
import java.util.function.Function;

/**
 * One row of a spec.
 *
 * @param name a name that the {@link Vocabulary} knows
 * @param setting the amount or the word
 * @param origin given by the user or filled in
 * @param note free text of the user, or the rule that a default comes from
 * @param line the line of the table that it was read from; 0 when it was not read
 */
public record SpecRow(String name, Setting setting, Origin origin, String note, int line) {

    /**
     * Checks the name against the kind of setting.
     *
     * @throws IllegalArgumentException when the vocabulary has no such quantity or choice
     */
    public SpecRow {
        map(setting, amount -> Vocabulary.quantity(name), word -> Vocabulary.choice(name));
    }

    /** The amount; empty when the row holds a word. */
    public Optional<Amount> amount() {
        return map(Optional::of, word -> Optional.empty());
    }

    /** The word; empty when the row holds an amount. */
    public Optional<String> word() {
        return map(amount -> Optional.empty(), Optional::of);
    }

    /** What the first function makes of an amount, or the second of the text of a word. */
    public <T> T map(Function<Amount, T> ofAmount, Function<String, T> ofWord) {
        return map(setting, ofAmount, ofWord);
    }

    private static <T> T map(Setting setting, Function<Amount, T> ofAmount, Function<String, T> ofWord) {
        return setting instanceof Amount amount ? ofAmount.apply(amount) : ofWord.apply(((Word) setting).text());
    }

    /** A row that is filled in because the user did not give it, with the rule in the note. */
    public static SpecRow filledIn(String name, Setting setting, String rule) {
        return new SpecRow(name, setting, Origin.DEFAULT, rule, 0);
    }
}
