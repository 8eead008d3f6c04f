package lampproof.deck;

import lampproof.unit.Decimal;

/**
 * Writes numbers as every simulator reads them: digits and an exponent that is a multiple of three, never a suffix.
 *
 * <p>A suffix is a trap: netlists read M as milli and F as femto.
 */
final class NetlistNumber {

    private static final int DIGITS = 10;

    private NetlistNumber() {}

    /**
     * The number as text, such as {@code 2.2e-6}.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a netlist contains only finite numbers, not " + value);
        }
        if (value == 0) {
            return "0";
        }
        Decimal digits = Decimal.of(value).rounded(DIGITS);
        int exponent = digits.thousands();
        String mantissa = digits.mantissa(exponent).toPlainString();
        return exponent == 0 ? mantissa : mantissa + "e" + exponent;
    }
}
