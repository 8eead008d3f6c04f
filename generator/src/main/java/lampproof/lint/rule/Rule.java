package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** One thing that can be wrong with a netlist. */
public interface Rule {

    /** The rule's name, in lower case with hyphens. */
    String name();

    /** What this rule finds in a netlist, in the order of its lines. */
    Stream<LintFinding> check(Netlist netlist);

    /** A finding of this rule for which a simulation is not to be trusted. */
    default LintFinding error(Place place, String what, String why, String write) {
        return new LintFinding(name(), Severity.ERROR, place, what, why, write);
    }

    /** A finding of this rule that a simulation may survive. */
    default LintFinding warning(Place place, String what, String why, String write) {
        return new LintFinding(name(), Severity.WARNING, place, what, why, write);
    }
}
