package lampproof.unit;

import java.math.BigDecimal;

/**
 * Writes a value with a unit that reads well, such as 470 uH for 0.00047.
 *
 * <p>The decimal point of the shortest exact text is moved, so {@link QuantityReader} gives back the same value bit for bit.
 */
public final class QuantityWriter {

    private static final int LONGEST = 24;

    private QuantityWriter() {}

    /** The value [unit of the dimension] with a unit that suits it, in ASCII: {@code 470 uH}. */
    public static String text(Dimension dimension, double value) {
        String unit = unit(dimension, value);
        return (number(dimension, value, unit) + " " + unit).strip();
    }

    /** The value [unit of the dimension] rounded to a count of significant digits, with a unit that suits it. */
    public static String rounded(Dimension dimension, double value, int digits) {
        return text(dimension, Decimal.of(value).rounded(digits).value());
    }

    /** The unit for a value [unit of the dimension], with the prefix that leaves at least one digit before the decimal point, or the smallest there is. */
    public static String unit(Dimension dimension, double value) {
        if (value == 0) {
            return dimension.unit();
        }
        int magnitude = Decimal.of(value).magnitude();
        String best = dimension.spellings().get(0);
        for (String spelling : dimension.spellings()) {
            int exponent = dimension.exponent(spelling).orElseThrow();
            if (exponent <= magnitude && exponent > dimension.exponent(best).orElseThrow()) {
                best = spelling;
            }
        }
        return best;
    }

    /** The number of a value [unit of the dimension] before a unit with a prefix. */
    public static String number(Dimension dimension, double value, String unit) {
        BigDecimal digits = Decimal.of(value).mantissa(dimension.exponent(unit).orElseThrow());
        String plain = digits.toPlainString();
        return plain.length() <= LONGEST ? plain : digits.toString();
    }
}
