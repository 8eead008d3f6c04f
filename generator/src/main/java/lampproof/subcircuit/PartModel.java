package lampproof.subcircuit;

/**
 * A sub-circuit in place of a part.
 *
 * @param kind the part
 * @param text its definition as written to a deck, without comments
 * @param startCurrent whether its initial current is the parameter {@code start_current}
 */
public record PartModel(PartKind kind, String text, boolean startCurrent) {}
