package lampproof.lint.rule;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;

/** A wanted voltage or current that this circuit does not have. */
final class UnknownVector implements Rule {

    private static final String WHY =
            "one unknown vector and wrdata writes no file at all, with one line in the log; an older file is then taken for the result";

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

    private Optional<LintFinding> voltage(Vectors.Vector vector, Set<String> nodes) {
        boolean known = nodes.contains(vector.name()) || vector.name().equals("gnd");
        return known
                ? Optional.empty()
                : Optional.of(error(
                        vector.place(),
                        "there is no node " + vector.name(),
                        WHY,
                        "the name of a node of this circuit; inside a subcircuit, x1.node"));
    }

    private Optional<LintFinding> current(Vectors.Vector vector, Map<String, ElementKind> elements) {
        ElementKind kind = elements.get(vector.name());
        if (kind == null) {
            return Optional.of(error(
                    vector.place(),
                    "there is no element " + vector.name(),
                    WHY,
                    "the name of a voltage source or inductor; inside a subcircuit, v.x1.vmeter"));
        }
        return kind.hasCurrentVector()
                ? Optional.empty()
                : Optional.of(error(
                        vector.place(),
                        "the simulator keeps no current of the " + kind.words() + " " + vector.name(),
                        WHY,
                        "a voltage source of 0 V in series as an ammeter, and its current"));
    }
}
