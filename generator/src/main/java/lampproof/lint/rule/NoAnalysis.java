package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Netlist;

/**
 * A deck with elements and without an analysis; a file of models and subcircuits needs none.
 *
 * <p>For an analysis that stands in the control block as a dot line, another rule says where it belongs.
 */
final class NoAnalysis implements Rule {

    @Override
    public String name() {
        return "no-analysis";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean missing = netlist.analyses().isEmpty()
                && netlist.commands().stream().noneMatch(Analysis::isDotLine)
                && !netlist.deck().elements().isEmpty();
        return missing
                ? Stream.of(error(
                        netlist.end(),
                        "the deck asks for no analysis",
                        "the simulator ends without a result, and may still report success",
                        ".tran STEP STOP, or another analysis, before .end"))
                : Stream.empty();
    }
}
