package lampproof.spec;

import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/**
 * A name whose value is a number.
 *
 * @param name the dotted name
 * @param dimension what is measured
 * @param least the least value that makes sense [unit of the dimension]
 * @param most the greatest value that makes sense [unit of the dimension]
 * @param meaning what it means, in one clause
 */
public record Quantity(String name, Dimension dimension, double least, double most, String meaning) implements Entry {

    /** Whether a value [unit of the dimension] makes sense. */
    public boolean holds(double value) {
        return least <= value && value <= most;
    }

    @Override
    public String allowed() {
        return QuantityWriter.text(dimension, least) + " to " + QuantityWriter.text(dimension, most);
    }

    /** The range that is allowed, in a unit of the dimension. */
    String allowedIn(String unit) {
        String range =
                QuantityWriter.number(dimension, least, unit) + " to " + QuantityWriter.number(dimension, most, unit);
        return (range + " " + unit).strip();
    }
}
