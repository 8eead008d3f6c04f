package lampproof.lint.rule;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.Word;

/** A subcircuit that is used with more or fewer nodes than it has ports. */
final class PortCount implements Rule {

    @Override
    public String name() {
        return "port-count";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes()
                .flatMap(path -> path.scope().elements().stream().flatMap(element -> check(element, path).stream()));
    }

    private Optional<LintFinding> check(Element element, ScopePath path) {
        return path.definition(element)
                .map(ScopePath::scope)
                .filter(scope -> scope.ports().size() != element.nodes().size())
                .map(scope -> finding(element, scope));
    }

    private LintFinding finding(Element element, Scope scope) {
        String ports = scope.ports().stream().map(Word::text).collect(Collectors.joining(" "));
        String name = element.model().map(Word::text).orElse("");
        return error(
                element.statement().whole(),
                element.name().text() + " connects " + element.nodes().size() + " nodes to the "
                        + scope.ports().size() + " ports of " + name,
                "the simulator stops; with the right number, a wrong order runs and gives wrong figures",
                "one node for each port, in the order " + ports);
    }
}
