package lampproof.spec;

/** A name that a spec may hold: a quantity or a choice. */
public sealed interface Entry permits Quantity, Choice {

    /** The dotted name: group, then what it is. */
    String name();

    /** What it means, in one clause. */
    String meaning();

    /** The range or the words that are allowed. */
    String allowed();
}
