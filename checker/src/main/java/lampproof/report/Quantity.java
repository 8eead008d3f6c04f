package lampproof.report;

import java.util.Locale;
import java.util.Set;
import lampproof.waveform.Engineering;

/** Values of figures for a reader: in engineering units, and in ASCII so that every terminal shows them. */
final class Quantity {

    private static final Set<String> UNSCALED = Set.of("%", "deg", "1", "degC", "K", "h", "dBuV", "dB");

    private Quantity() {}

    /** A value with four digits and its unit. */
    static String text(double value, String unit) {
        if (!Double.isFinite(value)) {
            return "not finite";
        }
        if (UNSCALED.contains(unit)) {
            String number = String.format(Locale.ROOT, unit.equals("1") ? "%.4f" : "%.2f", value);
            return unit.equals("1") ? number : number + " " + unit;
        }
        return Printable.of(Engineering.rounded(value, unit, 4));
    }
}
