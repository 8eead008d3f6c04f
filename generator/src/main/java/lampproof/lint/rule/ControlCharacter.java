package lampproof.lint.rule;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;

/** A character without a shape inside a line, in comments too; a tab is none of these. */
final class ControlCharacter implements Rule {

    private static final Pattern UNSEEN = Pattern.compile("[\\x00-\\x08\\x0a-\\x0c\\x0e-\\x1f\\x7f]|\\r(?!\\r*+$)");
    private static final String RETURN = "\r";

    @Override
    public String name() {
        return "control-character";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        List<SourceLine> lines =
                netlist.lines().stream().map(line -> line.source()).toList();
        Map<String, List<SourceLine>> returns = lines.stream()
                .filter(line -> line.text().endsWith(RETURN))
                .collect(Collectors.groupingBy(SourceLine::file));
        return Stream.concat(
                returns.values().stream().map(this::lineEnds), lines.stream().flatMap(line -> check(line).stream()));
    }

    private LintFinding lineEnds(List<SourceLine> lines) {
        SourceLine first = lines.get(0);
        int end = first.text().length();
        return error(
                Place.of(first, end - 1, end),
                lines.size() + " lines of the file end in more than one carriage return (U+000D)",
                "the simulator drops them, other programs read an empty line behind each line",
                "the file again, saved with LF line ends");
    }

    /** Carriage returns at the end of a line are left to {@link #lineEnds}. */
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
