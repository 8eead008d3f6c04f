package lampproof.spec;

import java.util.function.Function;

/** What stands behind a name in a spec: an amount or a word. */
public sealed interface Setting permits Amount, Word {

    /** What the first function makes of an amount, or the second of the text of a word. */
    <T> T map(Function<Amount, T> ofAmount, Function<String, T> ofWord);
}
