package lampproof.lint.netlist;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.unit.SpiceScale;

/**
 * A number as a netlist writes it: digits, perhaps an exponent, and letters of which the first may be a scale.
 *
 * @param digits the digits with sign and point
 * @param exponent the exponent with its letter; empty when there is none
 * @param tail whatever follows
 */
public record SpiceNumber(String digits, String exponent, String tail) {

    private static final Pattern FORM =
            Pattern.compile("([-+]?(?:\\d++\\.?+\\d*+|\\.\\d++))((?:[eEdD][-+]?\\d++)?+)(.*)", Pattern.DOTALL);

    /** The parts of a word that begins as a number does; empty for any other word. */
    public static Optional<SpiceNumber> of(String word) {
        Matcher matcher = FORM.matcher(word);
        return matcher.matches()
                ? Optional.of(new SpiceNumber(matcher.group(1), matcher.group(2), matcher.group(3)))
                : Optional.empty();
    }

    /** The value [unit of the place] of a plain number or of a parameter in braces that is one; empty for any other word. */
    public static OptionalDouble valueOf(Word word, ScopePath scope) {
        String text = word.text();
        boolean braced = text.length() > 2 && text.startsWith("{") && text.endsWith("}");
        String number = braced
                ? scope.parameter(text.substring(1, text.length() - 1).strip())
                        .map(Word::text)
                        .orElse("")
                : text;
        return of(number).map(SpiceNumber::value).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** The value [unit of the place] that ngspice reads: scale letters in either case, {@code meg} is mega, what follows is ignored. */
    public double value() {
        double number = Double.parseDouble(digits + exponent.replaceFirst("[dD]", "e"));
        return number * factor();
    }

    /** Whether the first letter behind the number is read as a scale. */
    public boolean isScaled() {
        return scale().isPresent();
    }

    private double factor() {
        String letters = tail.toLowerCase(Locale.ROOT);
        if (letters.startsWith("mil")) {
            return 25.4e-6;
        }
        int exponent = letters.startsWith("meg") ? SpiceScale.exponent("meg").orElseThrow() : scale().orElse(0);
        return Double.parseDouble("1e" + exponent);
    }

    /** The scale of the first letter, which may be a micro sign. */
    private OptionalInt scale() {
        return SpiceScale.exponent(tail.isEmpty() ? "" : tail.substring(0, 1).replace('\u00b5', 'u'));
    }
}
