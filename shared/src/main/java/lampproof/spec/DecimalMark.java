package lampproof.spec;

import java.util.Collection;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * The decimal mark of a table.
 *
 * <p>Where commas separate the columns it is the point. Elsewhere the numbers of the table decide, and a number that
 * could be one or one thousand is rejected, never guessed.
 */
enum DecimalMark {
    POINT("point"),
    COMMA("comma"),
    UNSETTLED("");

    private static final Pattern LEADING = Pattern.compile("([+-]?\\d*)([.,])(\\d+)(?![\\d.,])(.*)", Pattern.DOTALL);
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}(?![\\d.,eE]).*");
    private static final Pattern GROUPED = Pattern.compile("([+-]?\\d{1,3}(?:\\.\\d{3})+)(,\\d.*)");

    private final String word;

    DecimalMark(String word) {
        this.word = word;
    }

    /** The mark that the cells show; a semicolon table with a comma in a number was written where that is decimal. */
    static DecimalMark of(char separator, Collection<String> cells) {
        if (separator == ',') {
            return POINT;
        }
        boolean comma = cells.stream().anyMatch(cell -> shows(',', cell, separator == ';'));
        boolean point = cells.stream().anyMatch(cell -> shows('.', cell, false));
        return comma == point ? UNSETTLED : comma ? COMMA : POINT;
    }

    /**
     * The text with a decimal point, whatever follows the number.
     *
     * @throws UserFault when the number has the other mark, or could be one or one thousand
     */
    String withPoint(String text, String where) {
        Matcher number = LEADING.matcher(this == POINT ? text : ungrouped(text));
        if (!number.matches()) {
            return text;
        }
        if (this == UNSETTLED && maybeThousands(text)) {
            throw UserFault.badInput(oneOrOneThousand(number, where));
        }
        if (this != UNSETTLED && !number.group(2).equals(this == COMMA ? "," : ".")) {
            throw UserFault.badInput(otherMark(text, where));
        }
        return number.group(1) + "." + number.group(3) + number.group(4);
    }

    private static boolean shows(char mark, String cell, boolean certain) {
        Matcher number = LEADING.matcher(ungrouped(cell));
        return number.matches() && number.group(2).charAt(0) == mark && (certain || !maybeThousands(cell));
    }

    /** 1.234,5 can only be 1234.5, so its points are removed. */
    private static String ungrouped(String text) {
        Matcher grouped = GROUPED.matcher(text);
        return grouped.matches() ? grouped.group(1).replace(".", "") + grouped.group(2) : text;
    }

    private static boolean maybeThousands(String text) {
        return MAYBE_THOUSANDS.matcher(text).matches();
    }

    private static Finding oneOrOneThousand(Matcher number, String where) {
        String thousands = number.group(1) + number.group(3);
        String decimal = number.group(1) + number.group(2) + number.group(3);
        String next = "write " + thousands + ", or " + decimal + "0 with one digit more";
        return new Finding("ambiguous number: " + thousands + " or a decimal", where, number.group(), "", next);
    }

    private Finding otherMark(String text, String where) {
        String next = "write the decimal " + word + ", and no thousands separator";
        return new Finding("the decimal mark of this table is the " + word, where, text, "", next);
    }
}
