package lampproof.waveform;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Numbers as engineers write them: three digits before the point at most, with an SI prefix. */
public final class Engineering {

    private static final String[] PREFIXES = {"f", "p", "n", "µ", "m", "", "k", "M", "G", "T"};
    private static final int UNITY = 5;
    private static final int EXACT_DIGITS = 12;
    private static final int ROUNDED_DIGITS = 3;

    private Engineering() {}

    /** The number [unit of the text] with up to twelve digits and no idle zeros, as in {@code 1.5 µs}. */
    public static String exact(double value, String unit) {
        return text(new BigDecimal(value).round(new MathContext(EXACT_DIGITS)).stripTrailingZeros(), unit, 0);
    }

    /** The number [unit of the text] with three digits, idle zeros kept, as in {@code 50.0 µs}. */
    public static String rounded(double value, String unit) {
        return rounded(value, unit, ROUNDED_DIGITS);
    }

    /** The number [unit of the text] with a count of digits, idle zeros kept. */
    public static String rounded(double value, String unit, int digits) {
        return text(new BigDecimal(value).round(new MathContext(digits)), unit, digits);
    }

    /** The number [any unit] with a fixed count of decimals. */
    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** The number with so many digits kept; with those that it has when none are to be kept. */
    private static String text(BigDecimal value, String unit, int kept) {
        if (value.signum() == 0) {
            return "0 " + unit;
        }
        int power = value.precision() - value.scale() - 1;
        int step = Math.max(-UNITY, Math.min(PREFIXES.length - 1 - UNITY, Math.floorDiv(power, 3)));
        BigDecimal scaled = value.scaleByPowerOfTen(-3 * step);
        int decimals = kept > 0 ? kept - 1 - (power - 3 * step) : scaled.scale();
        return scaled.setScale(Math.max(0, decimals), java.math.RoundingMode.HALF_UP)
                        .toPlainString() + " " + PREFIXES[step + UNITY] + unit;
    }
}
