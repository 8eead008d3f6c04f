package lampproof.unit;

import java.util.Map;

/**
 * How a text writes values: in engineering notation, except in units that have a fixed count of decimals instead, and hours of
 * life, which have two digits.
 *
 * @param scaled for units in engineering notation
 * @param decimals digits behind the point of every other unit; whole numbers have their thousands apart
 */
public record ValueStyle(Engineering scaled, Map<String, Integer> decimals) {

    /** Figures in tables on a terminal: four digits, ASCII. */
    public static final ValueStyle FIGURES = new ValueStyle(
            Engineering.digits(4).inAscii(), Map.of("1", 4, "%", 2, "deg", 2, "degC", 1, "K", 1, "dB", 2, "dBuV", 2));

    /** The lamp at a glance: three digits, ASCII. */
    public static final ValueStyle HEADLINE = new ValueStyle(
            Engineering.digits(3).inAscii(), Map.of("1", 3, "%", 1, "deg", 0, "degC", 0, "K", 0, "dB", 1, "dBuV", 1));

    /** Figures on a page: four digits; temperatures like any other unit. */
    public static final ValueStyle PAGE =
            new ValueStyle(Engineering.digits(4), Map.of("1", 4, "%", 2, "deg", 2, "dB", 2, "dBuV", 2));

    /** Values in sentences and side by side: three digits, ASCII. */
    public static final ValueStyle SENTENCE = new ValueStyle(
            Engineering.upTo(3).inAscii(),
            Map.of("1", 3, "%", 1, "deg", 1, "degC", 0, "Hz", 0, "mm2", 0, "mm4", 0, "points", 0, "", 0));

    public ValueStyle {
        decimals = Map.copyOf(decimals);
    }

    /** The value [unit of the text] with its unit. */
    public String text(double value, String unit) {
        if (unit.equals("h") && Double.isFinite(value)) {
            return hours(value);
        }
        Scale scale = scale(value, unit);
        return scale.decimals() == 0 && decimals.containsKey(unit) && Double.isFinite(value)
                ? (PlainNumber.grouped(value) + " " + unit).strip()
                : scale.text(value);
    }

    /** A life is known to two digits at best. */
    private static String hours(double value) {
        return PlainNumber.grouped(Decimal.of(value).rounded(2).value()) + " h";
    }

    /** How this value [unit of the text] is written, for it and others about as large. */
    public Scale scale(double value, String unit) {
        Integer fixed = decimals.get(unit);
        return fixed == null ? scaled.scale(value, unit) : new Scale(Prefix.NONE, unit, fixed, scaled.ascii());
    }
}
