package lampproof.page;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import lampproof.waveform.Engineering;

/**
 * How the values of one figure are written: with one prefix and one count of decimals, so that they can be compared at a
 * glance, and padded so that the points of a column stand under each other.
 *
 * @param prefix prefix of the unit
 * @param unit the unit; empty for a plain number
 * @param decimals digits behind the point
 */
record NumberText(Prefix prefix, String unit, int decimals) {

    private static final Set<String> UNSCALED = Set.of("%", "deg", "dBuV", "dB");
    private static final int DIGITS = 4;
    private static final char FIGURE_SPACE = '\u2007';
    private static final char PUNCTUATION_SPACE = '\u2008';

    /** How values about as large as one of them are written. */
    static NumberText about(double value, String unit) {
        if (unit.equals("1")) {
            return new NumberText(Prefix.NONE, "", DIGITS);
        }
        if (UNSCALED.contains(unit)) {
            return new NumberText(Prefix.NONE, unit.replace("deg", "\u00b0"), 2);
        }
        Prefix prefix = Prefix.of(value);
        double digitsBefore = Math.floor(Math.log10(Math.max(1, Math.abs(value) / prefix.factor()) * (1 + 1e-9))) + 1;
        return new NumberText(prefix, unit, (int) Math.max(0, DIGITS - digitsBefore));
    }

    /** The unit with its prefix. */
    String scaledUnit() {
        return prefix.symbol() + unit;
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
        return value.isPresent() ? sign(String.format(Locale.ROOT, "%+.2f", value.getAsDouble())) : "";
    }

    private String number(double value) {
        return Double.isFinite(value) ? sign(Engineering.fixed(value / prefix.factor(), decimals)) : "not finite";
    }

    private static String padded(String number) {
        int point = number.indexOf('.');
        int missing = DIGITS - (point < 0 ? 0 : number.length() - point - 1);
        return number
                + (point < 0 ? PUNCTUATION_SPACE : "")
                + String.valueOf(FIGURE_SPACE).repeat(missing);
    }

    /** The hyphen is too short for a minus. */
    private static String sign(String number) {
        return number.replace('-', '\u2212');
    }
}
