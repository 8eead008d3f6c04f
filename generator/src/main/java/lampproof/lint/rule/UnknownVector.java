package lampproof.lint.rule;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.rule.Vectors.Vector;

/** A wanted voltage or current that this circuit does not have. */
final class UnknownVector implements Rule {

    @Override
    public String name() {
        return "unknown-vector";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Set<String> nodes = netlist.circuit().nodes();
        Map<String, ElementKind> elements = netlist.circuit().elements().stream()
                .collect(Collectors.toMap(
                        FlatElement::name, flat -> flat.element().kind(), (first, second) -> first));
        return Vectors.of(netlist)
                .filter(vector -> netlist.isComplete())
                .flatMap(vector -> (vector.isCurrent() ? current(vector, elements) : voltage(vector, nodes)).stream());
    }

    private Optional<LintFinding> voltage(Vector vector, Set<String> nodes) {
        boolean known = nodes.contains(vector.name()) || vector.name().equals("gnd");
        return known
                ? Optional.empty()
                : Optional.of(finding(
                        vector,
                        "there is no node " + vector.name(),
                        "the name of a node of this circuit; inside a subcircuit, x1.node"));
    }

    private Optional<LintFinding> current(Vector vector, Map<String, ElementKind> elements) {
        ElementKind kind = elements.get(vector.name());
        if (kind == null) {
            return Optional.of(finding(
                    vector,
                    "there is no element " + vector.name(),
                    "the name of a voltage source or inductor; inside a subcircuit, v.x1.vmeter"));
        }
        return kind.hasCurrentVector()
                ? Optional.empty()
                : Optional.of(finding(
                        vector,
                        "the simulator keeps no current of the " + kind.words() + " " + vector.name(),
                        "a voltage source of 0 V in series as an ammeter, and its current"));
    }

    private LintFinding finding(Vector vector, String what, String write) {
        return vector.isWritten()
                ? error(
                        vector.place(),
                        what,
                        "the simulator then writes no file at all, with one line in the log, and an older file is taken for the result",
                        write)
                : warning(vector.place(), what, "the simulator leaves it out with at most a line in the log", write);
    }
}
