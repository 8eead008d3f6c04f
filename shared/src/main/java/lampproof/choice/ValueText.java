package lampproof.choice;

import java.util.Locale;
import java.util.Map;
import lampproof.spec.Dimension;
import lampproof.spec.UnitWriter;

/** Values in words and sentences: three digits and a unit that suits them, in ASCII. */
final class ValueText {

    private static final Map<String, Dimension> SCALED = Map.of(
            "V", Dimension.VOLTAGE,
            "A", Dimension.CURRENT,
            "W", Dimension.POWER,
            "Ohm", Dimension.RESISTANCE,
            "H", Dimension.INDUCTANCE,
            "J", Dimension.ENERGY);
    private static final Map<String, String> FORMATS =
            Map.of("%", "%.1f %%", "1", "%.3f", "deg", "%.1f deg", "VA", "%.3g VA");

    private ValueText() {}

    /** A value [unit] in words. */
    static String of(double value, String unit) {
        Dimension dimension = SCALED.get(unit);
        if (dimension != null) {
            return UnitWriter.text(dimension, threeDigits(value));
        }
        String format = FORMATS.get(unit);
        return format == null
                ? String.format(Locale.ROOT, "%,.0f", value).replace(',', ' ') + (unit.isEmpty() ? "" : " " + unit)
                : String.format(Locale.ROOT, format, value);
    }

    /** A value in three digits. */
    static double threeDigits(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.2e", value));
    }
}
