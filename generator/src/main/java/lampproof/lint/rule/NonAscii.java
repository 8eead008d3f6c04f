package lampproof.lint.rule;

import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A letter outside ASCII in the code of a line; comments may hold any. */
final class NonAscii implements Rule {

    private static final Pattern NOT_ASCII = Pattern.compile("[^\\x00-\\x7f]{1,40}");

    @Override
    public String name() {
        return "non-ascii";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream().flatMap(this::check);
    }

    private Stream<LintFinding> check(DeckLine line) {
        return NOT_ASCII.matcher(line.code()).results().map(found -> finding(line, found));
    }

    private LintFinding finding(DeckLine line, MatchResult found) {
        String what = String.format(Locale.ROOT, "%s is no ASCII letter", named(found.group()));
        return error(
                Place.of(line.source(), line.from() + found.start(), line.from() + found.end()),
                what,
                why(found.group()),
                write(found.group()));
    }

    private static String named(String letters) {
        return String.format(Locale.ROOT, "'%s' (U+%04X)", letters, letters.codePointAt(0));
    }

    private static String why(String letters) {
        return switch (letters.codePointAt(0)) {
            case 0x00B5 ->
                "ngspice reads this micro sign as 1e-6, gnucap as 1: a factor of a million between simulators";
            case 0x03BC -> "ngspice and gnucap read this Greek letter as 1, so the value is a million times too large";
            case 0x03A9, 0x2126 -> "a unit is no part of a value, and not every simulator skips it";
            default -> "simulators differ in what they make of it: skipped, or the end of the word";
        };
    }

    private static String write(String letters) {
        return switch (letters.codePointAt(0)) {
            case 0x00B5, 0x03BC -> "u, or the exponent e-6";
            case 0x03A9, 0x2126 -> "the number alone";
            default -> "ASCII letters and digits";
        };
    }
}
