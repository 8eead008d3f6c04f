package lampproof.spec;

/** The value of a name in a spec: an amount or a word. */
public sealed interface Setting permits Amount, Word {}
