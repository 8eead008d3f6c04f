package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A comment behind code on one line. */
final class EndOfLineComment implements Rule {

    @Override
    public String name() {
        return "end-of-line-comment";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream().filter(this::hasComment).map(this::finding);
    }

    private boolean hasComment(DeckLine line) {
        return !line.isBlank() && !comment(line).text().isEmpty();
    }

    private static Place comment(DeckLine line) {
        String text = line.source().text();
        String rest = text.substring(line.to());
        int blanks = rest.length() - rest.stripLeading().length();
        return Place.of(line.source(), line.to() + blanks, text.stripTrailing().length());
    }

    private LintFinding finding(DeckLine line) {
        return warning(
                comment(line),
                "a comment stands behind code",
                "the marks $ ; and // begin a comment in one simulator and are part of the value or a variable in another",
                "the comment on a line of its own that begins with *");
    }
}
