package lampproof.unit;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;

/**
 * Reads a number and its unit. A text that is not a number with a unit is rejected; the reader never reads part of a text.
 *
 * <p>Numbers have a decimal point, no thousands separator, and may have an exponent. Units carry the SI prefixes that make
 * sense for them, both micro signs or {@code u}, and either ohm sign or {@code Ohm}. A prefix moves the exponent of the
 * text and is not multiplied, so 100 uH is exactly the number 1e-4.
 */
public final class QuantityReader {

    /** Digits, one decimal point, an exponent; nothing else that Java takes for a number. */
    public static final String NUMBER = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,3})?";

    private static final Pattern PLAIN = Pattern.compile("(" + NUMBER + ")");
    private static final Pattern PREFIX_INSIDE = Pattern.compile("([+-]?\\d+)([pnumkMGR\u00b5\u03bc])(\\d+)");
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}(?:[ .,'\u2019_]\\d{3})+(?:[.,]\\d+)?");
    private static final Pattern KIND_OF_VALUE = Pattern.compile("(.+?)(?i:_?(?:ac|dc|rms|eff|pk|peak|avg)|~)");
    private static final Pattern RANGE =
            Pattern.compile("(?>[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?)\\s*[^\\s\\d.-]*\\s*"
                    + "(?:\\.{2,3}|-|\u2013|to|\u00b1|\\+/-)\\s*[+-]?\\d.*");

    private QuantityReader() {}

    /**
     * Reads a value.
     *
     * @param dimension what the number measures
     * @param number the text of the number
     * @param unit the text of the unit
     * @param where the place of the number, for a fault
     * @param unitPlace the place of the unit, for a fault
     * @return the value [unit of the dimension]
     * @throws UserFault when the number or the unit is invalid
     */
    public static double read(Dimension dimension, String number, String unit, String where, String unitPlace) {
        String digits = digits(dimension, number, where);
        double value = shifted(digits, exponent(dimension, unit, unitPlace));
        if (Double.isInfinite(value) || (value == 0 && hasDigit(digits))) {
            throw UserFault.badInput(new Finding("the number is too large or too small", where, number, "", ""));
        }
        return value + 0.0;
    }

    /** The number text alone, checked and in ASCII. */
    private static String digits(Dimension dimension, String number, String where) {
        String text = number.strip().replace('\u2212', '-');
        if (!PLAIN.matcher(text).matches()) {
            throw UserFault.badInput(notANumber(dimension, text, where));
        }
        return text;
    }

    private static int exponent(Dimension dimension, String unit, String where) {
        OptionalInt exponent = dimension.exponent(spelling(dimension, unit));
        return exponent.orElseThrow(() -> UserFault.badInput(notAUnit(dimension, unit, where)));
    }

    /** The unit as {@link Dimension} spells it in ASCII, whether it has such a unit or not. */
    public static String spelling(Dimension dimension, String unit) {
        return dimension.completed(ascii(unit));
    }

    /** NFKC unifies the two micro signs, ohm signs, kelvin signs and the degree signs. */
    private static String ascii(String unit) {
        return Normalizer.normalize(unit, Normalizer.Form.NFKC)
                .strip()
                .replace('\u03bc', 'u')
                .replace("\u03a9", "Ohm")
                .replace("ohm", "Ohm")
                .replace("\u00b0", "deg");
    }

    private static double shifted(String digits, int exponent) {
        String[] parts = digits.split("[eE]", 2);
        int own = parts.length == 2 ? Integer.parseInt(parts[1]) : 0;
        return Double.parseDouble(parts[0] + "e" + (own + exponent));
    }

    private static boolean hasDigit(String digits) {
        return digits.split("[eE]", 2)[0].chars().anyMatch(digit -> '1' <= digit && digit <= '9');
    }

    private static Finding notANumber(Dimension dimension, String text, String where) {
        Matcher inside = PREFIX_INSIDE.matcher(text);
        if (inside.matches()) {
            return prefixInside(dimension, inside, where);
        }
        if (GROUPED.matcher(text).matches()) {
            return new Finding("a thousands separator in a number", where, text, "", "write the digits without it");
        }
        if (text.contains(",")) {
            return new Finding("a comma in a number", where, text, "", "write a decimal point");
        }
        if (RANGE.matcher(text).matches()) {
            return new Finding("a range in one cell", where, text, "", "put its ends into min and max");
        }
        return new Finding("invalid number", where, text, "digits, one decimal point, an exponent", "");
    }

    private static Finding prefixInside(Dimension dimension, Matcher inside, String where) {
        String prefix = inside.group(2).equals("R") ? "" : ascii(inside.group(2));
        String number = inside.group(1) + "." + inside.group(3);
        String unit = prefix + dimension.unit();
        String next = "write " + number + " " + unit + ": the number " + number + " with the unit " + unit;
        return new Finding("a prefix inside a number", where, inside.group(), "", next);
    }

    private static Finding notAUnit(Dimension dimension, String unit, String where) {
        String spelling = ascii(unit);
        List<String> allowed = dimension.spellings();
        String choices = String.join(", ", allowed);
        if (dimension.unit().isEmpty()) {
            return new Finding("a unit after a plain number", where, unit, "an empty cell", "");
        }
        if (spelling.isEmpty()) {
            return new Finding("the unit of this " + dimension.word() + " is missing", where, "", choices, "");
        }
        String what = owner(spelling)
                .map(other -> "a unit of " + other.word() + " instead of a unit of " + dimension.word())
                .orElse("unknown unit");
        String next = kindOfValue(spelling, allowed)
                .map(plain -> "write " + plain + "; the row defines whether it is an rms, mean or peak value")
                .orElseGet(() -> NearestName.question(spelling, allowed));
        return new Finding(what, where, unit, choices, next);
    }

    /** The unit of spellings such as Vac, VDC, Vrms or Vpk. */
    private static Optional<String> kindOfValue(String spelling, List<String> allowed) {
        Matcher kind = KIND_OF_VALUE.matcher(spelling);
        return kind.matches() ? Optional.of(kind.group(1)).filter(allowed::contains) : Optional.empty();
    }

    private static Optional<Dimension> owner(String spelling) {
        return Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.spellings().contains(spelling))
                .findFirst();
    }
}
