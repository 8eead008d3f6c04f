package lampproof.lint.netlist;

/**
 * A named value, {@code name=value}.
 *
 * @param name the name
 * @param value the value as written
 */
public record Parameter(Word name, Word value) {}
