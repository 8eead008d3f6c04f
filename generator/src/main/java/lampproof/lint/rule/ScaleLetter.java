package lampproof.lint.rule;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.SpiceNumber;
import lampproof.lint.netlist.Word;
import lampproof.unit.PlainNumber;

/** A letter behind a number that the simulator reads as another scale than the writer meant. */
final class ScaleLetter implements Rule {

    private static final Pattern NOT_A_LETTER = Pattern.compile("[^A-Za-z].*", Pattern.DOTALL);

    @Override
    public String name() {
        return "scale-letter";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return Numbers.of(netlist).flatMap(word -> check(word).stream());
    }

    private Optional<LintFinding> check(Word word) {
        return SpiceNumber.of(word.text()).flatMap(number -> check(word, number));
    }

    private Optional<LintFinding> check(Word word, SpiceNumber number) {
        String letters = NOT_A_LETTER.matcher(number.tail()).replaceFirst("");
        String lower = letters.toLowerCase(Locale.ROOT);
        if (lower.startsWith("meg") || letters.isEmpty()) {
            return Optional.empty();
        }
        if (lower.startsWith("mil")) {
            return Optional.of(mil(word, number));
        }
        return switch (letters.charAt(0)) {
            case 'M' -> Optional.of(capital(milli(word, number)));
            case 'F' -> Optional.of(capital(femto(word, number)));
            case 'A', 'a' -> lower.matches("a|amps?|amperes?") ? Optional.of(atto(word, number)) : Optional.empty();
            default -> twice(word, number);
        };
    }

    /** In a line all in capitals, as old model texts are, the letter is probably what it says. */
    private static LintFinding capital(LintFinding finding) {
        boolean capitals = finding.line().equals(finding.line().toUpperCase(Locale.ROOT));
        Severity severity = capitals ? Severity.WARNING : Severity.ERROR;
        return new LintFinding(
                finding.rule(), severity, finding.place(), finding.what(), finding.why(), finding.write());
    }

    private LintFinding milli(Word word, SpiceNumber number) {
        return error(
                word.place(),
                word.text() + " is " + plain(number, "e-3") + ": M is milli, as m is",
                "letter case is ignored, so a value meant as mega is a factor of 1e9 too small",
                plain(number, "e6") + " for mega, " + plain(number, "e-3") + " for milli");
    }

    private LintFinding femto(Word word, SpiceNumber number) {
        return error(
                word.place(),
                word.text() + " is " + plain(number, "e-15") + ": F is femto, not the unit farad",
                "a unit letter is read as a scale, so the value is a factor of 1e15 too small",
                plain(number, ""));
    }

    private LintFinding mil(Word word, SpiceNumber number) {
        return error(
                word.place(),
                word.text() + " is " + plain(number, "") + " times 25.4e-6: mil is a thousandth of an inch",
                "a value meant as milli is a factor of 39 too small",
                plain(number, "e-3") + " for milli");
    }

    private LintFinding atto(Word word, SpiceNumber number) {
        return warning(
                word.place(),
                word.text() + " ends in a unit letter that is a scale: A is atto in newer versions of ngspice",
                "the value is then a factor of 1e18 too small",
                plain(number, ""));
    }

    private Optional<LintFinding> twice(Word word, SpiceNumber number) {
        if (number.exponent().isEmpty() || !number.isScaled()) {
            return Optional.empty();
        }
        String value = PlainNumber.significant(number.value(), 3);
        return Optional.of(warning(
                word.place(),
                word.text() + " is scaled twice, to " + value,
                "the exponent and the letter behind it both count",
                "the exponent alone"));
    }

    /** The number with another exponent on top of its own, as an engineer would write it. */
    private static String plain(SpiceNumber number, String exponent) {
        return number.exponent().isEmpty() || exponent.isEmpty()
                ? number.digits() + number.exponent() + exponent
                : PlainNumber.significant(
                        Double.parseDouble(number.digits() + number.exponent()) * Double.parseDouble("1" + exponent),
                        3);
    }
}
