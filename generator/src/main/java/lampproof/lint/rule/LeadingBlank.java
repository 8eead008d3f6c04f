package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A statement that does not begin in the first column. */
final class LeadingBlank implements Rule {

    @Override
    public String name() {
        return "leading-blank";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream().filter(this::isIndented).map(this::finding);
    }

    private boolean isIndented(DeckLine line) {
        return line.part() == DeckLine.Part.CIRCUIT && !line.isBlank() && indent(line) > 0;
    }

    private static int indent(DeckLine line) {
        String text = line.source().text();
        return text.length() - text.stripLeading().length();
    }

    private LintFinding finding(DeckLine line) {
        return warning(
                Place.of(line.source(), 0, indent(line)),
                "the line begins with a blank",
                "some simulators take such a line as a comment: the element or continuation is lost there without a message",
                "the same line from column 1");
    }
}
