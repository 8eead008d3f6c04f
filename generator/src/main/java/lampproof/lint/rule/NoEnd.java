package lampproof.lint.rule;

import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;

/** A deck without its last line; it may have been cut short. */
final class NoEnd implements Rule {

    @Override
    public String name() {
        return "no-end";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean ended = netlist.directives().stream().anyMatch(directive -> directive.isOneOf(Set.of(".end")));
        return ended || netlist.deck().elements().isEmpty()
                ? Stream.empty()
                : Stream.of(warning(
                        netlist.end(),
                        "the deck has no .end",
                        "ngspice does without it, but a deck that was cut short while it was written looks the same",
                        ".end as the last line"));
    }
}
