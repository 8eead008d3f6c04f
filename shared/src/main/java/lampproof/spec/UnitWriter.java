package lampproof.spec;

import java.math.BigDecimal;

/**
 * Writes a value with a unit that reads well, such as 470 uH for 0.00047.
 *
 * <p>The decimal point of the shortest exact text is moved, so {@link UnitReader} gives back the same value bit for bit.
 */
public final class UnitWriter {

    private static final int LONGEST = 24;

    private UnitWriter() {}

    /** The value [unit of the dimension] with a unit that suits it, in ASCII: {@code 470 uH}. */
    public static String text(Dimension dimension, double value) {
        String unit = unit(dimension, value);
        return (number(dimension, value, unit) + " " + unit).strip();
    }

    /** The unit for a value [unit of the dimension], with the prefix that leaves at least one digit before the decimal point, or the smallest there is. */
    public static String unit(Dimension dimension, double value) {
        if (value == 0) {
            return dimension.unit();
        }
        int magnitude = magnitude(Math.abs(value));
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
        int exponent = dimension.exponent(unit).orElseThrow();
        BigDecimal digits = decimal(value).scaleByPowerOfTen(-exponent).stripTrailingZeros();
        String plain = digits.toPlainString();
        return plain.length() <= LONGEST ? plain : digits.toString();
    }

    private static int magnitude(double value) {
        BigDecimal digits = decimal(value);
        return digits.precision() - digits.scale() - 1;
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(Double.toString(value));
    }
}
