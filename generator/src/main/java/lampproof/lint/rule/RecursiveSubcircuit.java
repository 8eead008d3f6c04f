package lampproof.lint.rule;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** A subcircuit that contains itself, straight or round about: its use is what flattening leaves over. */
final class RecursiveSubcircuit implements Rule {

    @Override
    public String name() {
        return "recursive-subcircuit";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Set<Word> defined = netlist.scopes()
                .flatMap(path -> path.scope().elements().stream()
                        .filter(element -> path.definition(element).isPresent()))
                .map(Element::name)
                .collect(Collectors.toSet());
        return netlist.circuit().elements().stream()
                .map(FlatElement::element)
                .filter(element -> element.kind() == ElementKind.SUBCIRCUIT && defined.contains(element.name()))
                .flatMap(element -> element.model().stream())
                .map(this::finding);
    }

    private LintFinding finding(Word name) {
        return error(
                name.place(),
                "the subcircuit " + name.text() + " contains itself",
                "the circuit has no end: the simulator gives up after some levels and stops",
                "the subcircuit that was meant");
    }
}
