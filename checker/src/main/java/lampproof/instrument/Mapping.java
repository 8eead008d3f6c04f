package lampproof.instrument;

/**
 * One quantity and the column that shows it: {@code quantity = gain x column + offset}.
 *
 * @param quantity name of the quantity, such as {@code line.voltage}
 * @param column name of the column
 * @param gain gain, negative for a probe turned round [-]
 * @param offset offset [unit of the quantity]
 * @param delay how much later than the others the column shows what happened [s]
 */
public record Mapping(String quantity, String column, double gain, double offset, double delay) {

    /** A column that shows a quantity as it is. */
    public static Mapping plain(String quantity, String column) {
        return new Mapping(quantity, column, 1, 0, 0);
    }

    /** Whether the column shows the quantity as it is, be it late. */
    boolean asItIs() {
        return gain == 1 && offset == 0;
    }

    /** The same probe turned round. */
    public Mapping reversed() {
        return new Mapping(quantity, column, -gain, 0 - offset, delay);
    }
}
