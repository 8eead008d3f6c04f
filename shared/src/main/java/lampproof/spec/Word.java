package lampproof.spec;

/**
 * The word chosen for a {@link Choice}.
 *
 * @param text the word
 */
public record Word(String text) implements Setting {}
