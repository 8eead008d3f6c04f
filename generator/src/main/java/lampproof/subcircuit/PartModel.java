package lampproof.subcircuit;

/**
 * A sub-circuit in place of a part.
 *
 * @param kind the part
 * @param text its definition as it stands in a deck, without comments
 * @param startCurrent whether it takes the current that it starts with as the parameter {@code start_current}
 */
public record PartModel(PartKind kind, String text, boolean startCurrent) {}
