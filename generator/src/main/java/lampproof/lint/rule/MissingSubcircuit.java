package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.Word;

/** A subcircuit that is used and not defined. */
final class MissingSubcircuit implements Rule {

    @Override
    public String name() {
        return "missing-subcircuit";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.isComplete() ? netlist.scopes().flatMap(this::check) : Stream.empty();
    }

    private Stream<LintFinding> check(ScopePath path) {
        return path.scope().elements().stream()
                .filter(element -> element.kind() == ElementKind.SUBCIRCUIT)
                .filter(element -> path.definition(element).isEmpty())
                .flatMap(element -> element.model().stream().map(name -> finding(element, name)));
    }

    private LintFinding finding(Element element, Word name) {
        return error(
                name.place(),
                element.name().text() + " uses the subcircuit " + name.text() + ", which is not defined",
                "the simulator stops",
                ".subckt " + name.text() + " with its ports, or .include of the file that holds it");
    }
}
