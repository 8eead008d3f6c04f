package lampproof.spec;

import java.util.function.Function;

/**
 * A value with its spread, in the unit that its {@link Dimension} is kept in.
 *
 * @param least the least value [unit of the dimension]
 * @param typical the value to design for [unit of the dimension]
 * @param most the greatest value [unit of the dimension]
 */
public record Amount(double least, double typical, double most) implements Setting {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException unless {@code least <= typical <= most}, all finite
     */
    public Amount {
        if (!(Double.NEGATIVE_INFINITY < least
                && least <= typical
                && typical <= most
                && most < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not in rising order: " + least + ", " + typical + ", " + most);
        }
    }

    /** An amount without a spread [unit of the dimension]. */
    public static Amount of(double value) {
        return new Amount(value, value, value);
    }

    /** Whether the three values are one. */
    public boolean isSingle() {
        return least == most;
    }

    @Override
    public <T> T map(Function<Amount, T> ofAmount, Function<String, T> ofWord) {
        return ofAmount.apply(this);
    }
}
