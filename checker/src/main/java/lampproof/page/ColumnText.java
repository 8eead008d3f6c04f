package lampproof.page;

import java.util.OptionalDouble;
import lampproof.compare.Verdict;
import lampproof.unit.PlainNumber;
import lampproof.unit.Prefix;
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

    /**
     * How values about as large as one of them are written. Temperatures, levels and life are not known to four digits: they
     * are written in whole degrees, tenths of a decibel and thousands of hours.
     */
    static ColumnText about(double value, String unit) {
        return switch (unit) {
            case "h" -> new ColumnText(new Scale(Prefix.KILO, unit, 0, false));
            case "degC", "K" -> new ColumnText(new Scale(Prefix.NONE, unit, 0, false));
            case "dB", "dBuV" -> new ColumnText(new Scale(Prefix.NONE, unit, 1, false));
            default -> fourDigits(value, unit);
        };
    }

    private static ColumnText fourDigits(double value, String unit) {
        Scale scale = ValueStyle.PAGE.scale(value == 0 ? 1 : value, unit);
        return new ColumnText(scale.withDecimals(Math.min(MOST_DECIMALS, scale.decimals())));
    }

    /** The unit with its prefix. */
    String scaledUnit() {
        return switch (scale.unit()) {
            case "deg" -> "\u00b0";
            case "degC" -> "\u00b0C";
            case "dBuV" -> "dB\u00b5V";
            case "h" -> "thousand\u00a0h";
            default -> scale.scaledUnit();
        };
    }

    /** A value without its unit, ready for a column; empty when there is none. */
    String column(OptionalDouble value) {
        return value.isPresent() ? padded(number(value.getAsDouble())) : "";
    }

    /** A value with its unit. */
    String text(double value) {
        boolean joined = scaledUnit().isEmpty() || scale.unit().equals("deg");
        return number(value) + (joined ? "" : "\u00a0") + scaledUnit();
    }

    /** A value with its unit and the prefix that suits it. */
    static String text(double value, String unit) {
        return about(value, unit).text(value);
    }

    /** A value with its unit and the prefix that suits it; empty when there is none. */
    static String text(OptionalDouble value, String unit) {
        return value.isPresent() ? text(value.getAsDouble(), unit) : "";
    }

    /**
     * How far a simulated value lies from a predicted one: decibels in dB, all else in per cent; empty when there is none.
     */
    static String deviation(Verdict verdict) {
        String unit = verdict.prediction().figure().unit();
        if (unit.startsWith("dB")) {
            return verdict.simulated().isPresent()
                    ? deviation(
                            verdict.simulated().getAsDouble()
                                    - verdict.prediction().value(),
                            "dB")
                    : "";
        }
        return verdict.deviation().isPresent() ? deviation(verdict.deviation().getAsDouble(), "%") : "";
    }

    private static String deviation(double value, String unit) {
        return minus(PlainNumber.signed(value, 2)) + "\u00a0" + unit;
    }

    private String number(double value) {
        return minus(scale.number(value));
    }

    private static String padded(String number) {
        int point = number.indexOf('.');
        int missing = MOST_DECIMALS - (point < 0 ? 0 : number.length() - point - 1);
        return number
                + (point < 0 ? PUNCTUATION_SPACE : "")
                + String.valueOf(FIGURE_SPACE).repeat(missing);
    }

    /** The hyphen is too short for a minus. */
    static String minus(String number) {
        return number.replace('-', '\u2212');
    }
}
