package lampproof.measure;

/**
 * A quantity that is measured: a signal of a file, or a weighted sum of several.
 *
 * @param index place among the channels of its pass
 * @param name what it is called in messages
 */
public record Channel(int index, String name) {}
