package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;

/** A deck with elements and without an analysis; a file of models and subcircuits needs none. */
final class NoAnalysis implements Rule {

    @Override
    public String name() {
        return "no-analysis";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean missing =
                netlist.analyses().isEmpty() && !netlist.deck().elements().isEmpty();
        return missing
                ? Stream.of(error(
                        netlist.end(),
                        "the deck asks for no analysis",
                        "the simulator ends without a result, and may still report success",
                        ".tran STEP STOP, or another analysis, before .end"))
                : Stream.empty();
    }
}
