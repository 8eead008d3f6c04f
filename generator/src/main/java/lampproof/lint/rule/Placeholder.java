package lampproof.lint.rule;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A mark that a template should have replaced. */
final class Placeholder implements Rule {

    private static final Pattern MARK = Pattern.compile(
            "@\\w{1,60}@|\\{\\{[^{}]{0,80}\\}\\}|\\$\\{[^{}]{0,80}\\}|</?[#@][^<>]{0,80}>|\\[=[^\\[\\]]{0,80}\\]");

    @Override
    public String name() {
        return "placeholder";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream().flatMap(this::check);
    }

    private Stream<LintFinding> check(DeckLine line) {
        return MARK.matcher(line.source().text()).results().map(mark -> finding(line, mark));
    }

    private LintFinding finding(DeckLine line, MatchResult mark) {
        return error(
                Place.of(line.source(), mark.start(), mark.end()),
                "the placeholder " + mark.group() + " was never replaced",
                "the simulator stops here, or reads the mark as no value and goes on with 1 milliohm",
                "the value itself");
    }
}
