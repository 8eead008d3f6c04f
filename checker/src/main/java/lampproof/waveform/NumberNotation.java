package lampproof.waveform;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import lampproof.unit.SpiceScale;

/**
 * The notations of numbers in a table.
 *
 * <p>Java's own extras (hexadecimal, a closing {@code f} or {@code d}) are invalid here: {@code 1.f} of a simulator is
 * one femto.
 */
public enum NumberNotation {
    /** {@code 1.5e-3}. */
    POINT {
        @Override
        double plain(String text) {
            return NumberNotation.simple(text);
        }
    },
    /** {@code 1,5E-03} and {@code 1.234,5}. */
    COMMA {
        @Override
        double plain(String text) {
            boolean grouped = GROUPED.matcher(text).matches();
            if (!grouped && text.indexOf('.') >= 0) {
                return Double.NaN;
            }
            return NumberNotation.simple(text.replace(".", "").replace(',', '.'));
        }
    },
    /** {@code 15}, where the meaning of a mark would be ambiguous. */
    WHOLE {
        @Override
        double plain(String text) {
            return text.indexOf('.') >= 0 ? Double.NaN : NumberNotation.simple(text);
        }
    },
    /** {@code 1,234.5}. */
    GROUPED_POINT {
        @Override
        double plain(String text) {
            boolean grouped = GROUPED_BY_COMMA.matcher(text).matches();
            return !grouped && text.indexOf(',') >= 0 ? Double.NaN : NumberNotation.simple(text.replace(",", ""));
        }
    },
    /** {@code 1.5u} and {@code 50.n}, letters as SPICE reads them. */
    SUFFIXED {
        @Override
        double plain(String text) {
            int end = text.length();
            while (end > 0 && Character.isLetter(text.charAt(end - 1))) {
                end--;
            }
            OptionalInt exponent = SpiceScale.exponent(text.substring(end));
            if (exponent.isEmpty()) {
                return end < text.length() ? Double.NaN : NumberNotation.simple(text);
            }
            return NumberNotation.simple(text.substring(0, end) + "e" + exponent.getAsInt());
        }
    };

    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+(,\\d*)?");
    private static final Pattern GROUPED_BY_COMMA = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+(\\.\\d*)?");
    private static final Pattern SIMPLE =
            Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eEdD][+-]?\\d+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?(nan(\\(.*\\))?|inf(inity)?|1\\.#\\w+)", Pattern.CASE_INSENSITIVE);

    abstract double plain(String text);

    /** The number [unit of the text]; not-a-number if the text is invalid. */
    public double value(String text) {
        return plain(text.strip());
    }

    /** Whether the text is infinity or not-a-number. */
    public static boolean notFinite(String text) {
        return NOT_FINITE.matcher(text.strip()).matches();
    }

    private static double simple(String text) {
        if (!SIMPLE.matcher(text).matches()) {
            return Double.NaN;
        }
        return JavaDoubleParser.parseDouble(text.replace('d', 'e').replace('D', 'e'));
    }
}
