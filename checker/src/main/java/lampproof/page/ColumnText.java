package lampproof.page;

import java.util.OptionalDouble;
import lampproof.unit.PlainNumber;
import lampproof.unit.Scale;
import lampproof.unit.ValueStyle;

/**
 * The values of one figure in a column: on one scale, and padded so that the points stand under each other.
 *
 * @param scale prefix, unit and decimals
 */
record ColumnText(Scale scale) {

    private static final int MOST_DECIMALS = 4;
    private static final char FIGURE_SPACE = '\u2007';
    private static final char PUNCTUATION_SPACE = '\u2008';

    /** How values about as large as one of them are written. */
    static ColumnText about(double value, String unit) {
        Scale scale = ValueStyle.PAGE.scale(value == 0 ? 1 : value, unit);
        return new ColumnText(scale.withDecimals(Math.min(MOST_DECIMALS, scale.decimals())));
    }

    /** The unit with its prefix. */
    String scaledUnit() {
        return scale.unit().equals("deg") ? "\u00b0" : scale.scaledUnit();
    }

    /** A value without its unit, ready for a column; empty when there is none. */
    String column(OptionalDouble value) {
        return value.isPresent() ? padded(number(value.getAsDouble())) : "";
    }

    /** A value with its unit. */
    String text(double value) {
        return (number(value) + "\u00a0" + scaledUnit()).strip();
    }

    /** A value with its unit and the prefix that suits it. */
    static String text(double value, String unit) {
        return about(value, unit).text(value);
    }

    /** A value with its unit and the prefix that suits it; empty when there is none. */
    static String text(OptionalDouble value, String unit) {
        return value.isPresent() ? text(value.getAsDouble(), unit) : "";
    }

    /** A difference in per cent, ready for a column; empty when there is none. */
    static String percent(OptionalDouble value) {
        return value.isPresent() ? sign(PlainNumber.signed(value.getAsDouble(), 2)) : "";
    }

    private String number(double value) {
        return sign(scale.number(value));
    }

    private static String padded(String number) {
        int point = number.indexOf('.');
        int missing = MOST_DECIMALS - (point < 0 ? 0 : number.length() - point - 1);
        return number
                + (point < 0 ? PUNCTUATION_SPACE : "")
                + String.valueOf(FIGURE_SPACE).repeat(missing);
    }

    /** The hyphen is too short for a minus. */
    private static String sign(String number) {
        return number.replace('-', '\u2212');
    }
}
