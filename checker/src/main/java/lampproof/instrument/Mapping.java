package lampproof.instrument;

/**
 * One quantity and its column: {@code quantity = gain x column + offset}.
 *
 * @param quantity name of the quantity, such as {@code line.voltage}
 * @param column name of the column
 * @param gain gain, negative for a reversed probe [-]
 * @param offset offset [unit of the quantity]
 * @param delay delay of the column against the others [s]
 */
public record Mapping(String quantity, String column, double gain, double offset, double delay) {

    /** A column with gain 1 and without offset. */
    public static Mapping plain(String quantity, String column) {
        return new Mapping(quantity, column, 1, 0, 0);
    }

    /** Whether the gain is 1 and the offset 0, with or without a delay. */
    boolean asItIs() {
        return gain == 1 && offset == 0;
    }

    /** The same probe, reversed. */
    public Mapping reversed() {
        return new Mapping(quantity, column, -gain, 0 - offset, delay);
    }
}
