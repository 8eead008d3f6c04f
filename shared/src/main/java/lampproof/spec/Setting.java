package lampproof.spec;

/** What stands behind a name in a spec: an amount or a word. */
public sealed interface Setting permits Amount, Word {}
