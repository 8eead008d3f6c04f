package lampproof.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number as decimal digits and a power of ten.
 *
 * <p>The digits are those of the shortest text that reads back as the same {@code double}, so 0.1 is 1 and a power, and a
 * tie such as 2.675 is rounded up as on paper.
 *
 * @param digits the digits and their scale
 */
public record Decimal(BigDecimal digits) {

    /**
     * The digits of a number [any unit].
     *
     * @throws NumberFormatException when it is not finite
     */
    public static Decimal of(double value) {
        return new Decimal(new BigDecimal(Double.toString(value)));
    }

    /** The number with so many significant digits at most. */
    public Decimal rounded(int count) {
        return new Decimal(digits.round(new MathContext(count, RoundingMode.HALF_UP)));
    }

    /** The power of ten of the first digit; 0 for zero. */
    public int magnitude() {
        return digits.signum() == 0 ? 0 : digits.precision() - digits.scale() - 1;
    }

    /** The greatest multiple of three that is not above the magnitude: the exponent of engineering notation. */
    public int thousands() {
        return 3 * Math.floorDiv(magnitude(), 3);
    }

    /** What stands before a power of ten, without idle zeros. */
    public BigDecimal mantissa(int exponent) {
        return digits.scaleByPowerOfTen(-exponent).stripTrailingZeros();
    }

    /** What stands before a power of ten, rounded to so many decimals, idle zeros kept. */
    String fixed(int exponent, int decimals) {
        return digits.scaleByPowerOfTen(-exponent)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The number [any unit] again. */
    public double value() {
        return digits.doubleValue();
    }
}
