package lampproof.lint.rule;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.SpiceNumber;
import lampproof.lint.netlist.Word;

/** A value of which the simulator reads only the beginning, as in {@code 4k7} or {@code 100n/400V}. */
final class UnreadTail implements Rule {

    private static final Pattern LETTERS = Pattern.compile("[A-Za-z\u00b5\u03bc\u03a9\u2126]*");
    private static final Pattern POINT = Pattern.compile("([A-Za-z]{1,3})(\\d{1,9})");

    @Override
    public String name() {
        return "unread-tail";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return Numbers.of(netlist).flatMap(word -> check(word).stream());
    }

    private Optional<LintFinding> check(Word word) {
        return SpiceNumber.of(word.text())
                .filter(number -> !LETTERS.matcher(number.tail()).matches())
                .map(number -> finding(word, number));
    }

    private LintFinding finding(Word word, SpiceNumber number) {
        int read =
                word.text().length() - number.tail().length() + letters(number).length();
        return error(
                word.place(),
                word.text() + " is read only as far as " + word.text().substring(0, read),
                "the simulator drops the rest without a message, and versions differ in where they stop",
                suggestion(number));
    }

    private static String letters(SpiceNumber number) {
        return number.tail().replaceFirst("[^A-Za-z].*", "");
    }

    /** {@code 4k7} was meant as {@code 4.7k}; for anything else there is no telling. */
    private static String suggestion(SpiceNumber number) {
        var point = POINT.matcher(number.tail());
        boolean infix = point.matches()
                && number.exponent().isEmpty()
                && !number.digits().contains(".");
        if (!infix) {
            return "one number and nothing behind it";
        }
        String scale = point.group(1).matches("[Rr]") ? "" : point.group(1);
        return number.digits() + "." + point.group(2) + scale;
    }
}
