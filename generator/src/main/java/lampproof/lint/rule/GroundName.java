package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** Ground under another name than 0. */
final class GroundName implements Rule {

    @Override
    public String name() {
        return "ground-name";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<Word> ports = netlist.scopes().flatMap(path -> path.scope().ports().stream());
        Stream<Word> nodes = netlist.elements().flatMap(GroundName::nodes);
        return Stream.concat(ports, nodes).filter(word -> word.is("gnd")).map(this::finding);
    }

    private static Stream<Word> nodes(Element element) {
        return Stream.concat(element.nodes().stream(), element.controls().stream());
    }

    private LintFinding finding(Word word) {
        return warning(
                word.place(),
                word.text() + " is ground in ngspice and an ordinary floating node in other simulators",
                "the same deck gives different figures there; as a port of a subcircuit it is ground whatever is connected",
                "0, or another name where it is not ground");
    }
}
