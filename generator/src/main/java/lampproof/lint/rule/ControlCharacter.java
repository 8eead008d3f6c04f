package lampproof.lint.rule;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;

/** A character without a shape inside a line, in comments too; a tab is none of these. */
final class ControlCharacter implements Rule {

    private static final Pattern UNSEEN = Pattern.compile("[\\x00-\\x08\\x0a-\\x1f\\x7f]");

    @Override
    public String name() {
        return "control-character";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream().flatMap(line -> check(line.source()).stream());
    }

    private Optional<LintFinding> check(SourceLine line) {
        Matcher unseen = UNSEEN.matcher(line.text());
        return unseen.find() ? Optional.of(finding(line, unseen.start())) : Optional.empty();
    }

    private LintFinding finding(SourceLine line, int at) {
        return error(
                Place.of(line, at, at + 1),
                String.format(Locale.ROOT, "the line holds the control character U+%04X", (int)
                        line.text().charAt(at)),
                "the simulator drops it or ends the line at it, so what it reads is not what is shown",
                "printed characters, blanks and tabs, and a line feed at the end of each line");
    }
}
