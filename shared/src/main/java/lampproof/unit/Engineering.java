package lampproof.unit;

/**
 * Values in engineering notation: at most three digits before the point, with an SI prefix where the unit takes one.
 *
 * @param least significant digits at least; idle zeros fill them
 * @param most significant digits at most
 * @param ascii whether micro is written as u
 */
public record Engineering(int least, int most, boolean ascii) {

    private static final Engineering MESSAGE = digits(3);
    private static final Engineering PRECISE = upTo(12);

    /** With a count of significant digits, idle zeros kept: 50.0 and 1.20. */
    public static Engineering digits(int count) {
        return new Engineering(count, count, false);
    }

    /** With a count of significant digits at most, idle zeros dropped: 50 and 1.2. */
    public static Engineering upTo(int count) {
        return new Engineering(1, count, false);
    }

    /** The same in ASCII: u for micro. */
    public Engineering inAscii() {
        return new Engineering(least, most, true);
    }

    /** The value [unit of the text] with three digits, as in {@code 50.0 µs}: what a message needs. */
    public static String rounded(double value, String unit) {
        return MESSAGE.text(value, unit);
    }

    /** The value [unit of the text] with up to twelve digits, as in {@code 1.5 µs}: a place in a record. */
    public static String precise(double value, String unit) {
        return PRECISE.text(value, unit);
    }

    /** The value [unit of the text] with its unit. */
    public String text(double value, String unit) {
        return scale(value, unit).text(value);
    }

    /** How this value [unit of the text] is written, for it and others about as large. */
    public Scale scale(double value, String unit) {
        if (value == 0 || !Double.isFinite(value)) {
            return new Scale(Prefix.NONE, unit, 0, ascii);
        }
        Decimal digits = Decimal.of(value).rounded(most);
        Prefix prefix = Prefix.ofMagnitude(digits.magnitude(), unit);
        int filled = least - 1 - (digits.magnitude() - prefix.exponent());
        int decimals = Math.max(filled, digits.mantissa(prefix.exponent()).scale());
        return new Scale(prefix, unit, Math.max(0, decimals), ascii);
    }
}
