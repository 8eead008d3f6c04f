package lampproof.unit;

import java.util.Locale;

/** Numbers without a unit, or before one that the caller fixes. */
public final class PlainNumber {

    private PlainNumber() {}

    /** The number [any unit] with a fixed count of decimals: 1.50. */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** A share [-] in per cent with a fixed count of decimals: 12.5 %. */
    public static String percent(double share, int decimals) {
        return fixed(100 * share, decimals) + " %";
    }

    /** The number [any unit] with its sign and a fixed count of decimals: +1.50. */
    public static String signed(double value, int decimals) {
        return String.format(Locale.ROOT, "%+." + decimals + "f", value);
    }

    /** The number [any unit] with a count of significant digits, with a power of ten where it is small or large: 1.50e-06. */
    public static String significant(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "g", value);
    }

    /** The whole number [any unit] with its thousands apart: 50 000. */
    public static String grouped(double value) {
        return String.format(Locale.ROOT, "%,.0f", value).replace(',', ' ');
    }
}
