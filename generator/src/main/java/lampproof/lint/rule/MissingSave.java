package lampproof.lint.rule;

import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Netlist;

/** A transient analysis that keeps every vector because the deck does not say which ones it needs. */
final class MissingSave implements Rule {

    @Override
    public String name() {
        return "missing-save";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean saves = netlist.directives().stream().anyMatch(each -> each.isOneOf(Set.of(".save", ".probe")))
                || netlist.commands().stream().anyMatch(each -> each.isOneOf(Set.of("save")));
        return saves
                ? Stream.empty()
                : netlist.analyses().stream()
                        .filter(Analysis::isTransient)
                        .limit(1)
                        .map(this::finding);
    }

    private LintFinding finding(Analysis analysis) {
        return warning(
                analysis.statement().whole(),
                "no .save says which vectors are needed",
                "every node and current is kept for every time step: more memory, and up to a quarter more run time",
                ".save with the vectors that are written or measured");
    }
}
