package lampproof.lint.rule;

import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;

/** A resistor, capacitor or inductor without a value. */
final class MissingValue implements Rule {

    private static final Map<ElementKind, String> TAKEN = Map.of(
            ElementKind.RESISTOR, "1 milliohm",
            ElementKind.CAPACITOR, "0",
            ElementKind.INDUCTOR, "0");
    private static final Set<String> NO_VALUES =
            Set.of("ic", "m", "temp", "dtemp", "tc", "tc1", "tc2", "noisy", "scale");

    @Override
    public String name() {
        return "missing-value";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.elements().filter(this::isWithoutValue).map(this::finding);
    }

    private boolean isWithoutValue(Element element) {
        return TAKEN.containsKey(element.kind())
                && element.values().isEmpty()
                && element.model().isEmpty()
                && element.parameters().stream()
                        .allMatch(
                                parameter -> NO_VALUES.contains(parameter.name().lower()));
    }

    private LintFinding finding(Element element) {
        return error(
                element.statement().whole(),
                element.kind().words() + " " + element.name().text() + " has no value",
                "the simulator takes " + TAKEN.get(element.kind()) + " and goes on with wrong figures",
                "the value behind the second node");
    }
}
