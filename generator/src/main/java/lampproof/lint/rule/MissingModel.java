package lampproof.lint.rule;

import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.Word;

/** An element whose model is not defined, or that names none although its kind needs one. */
final class MissingModel implements Rule {

    @Override
    public String name() {
        return "missing-model";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.isComplete()
                ? netlist.scopes()
                        .flatMap(path ->
                                path.scope().elements().stream().flatMap(element -> check(element, path).stream()))
                : Stream.empty();
    }

    private Optional<LintFinding> check(Element element, ScopePath path) {
        boolean passive = !element.kind().needsModel();
        return switch (element.kind()) {
            case SUBCIRCUIT, OPAQUE -> Optional.empty();
            default ->
                element.model().isPresent()
                        ? element.model()
                                .filter(name -> !isKnown(name, path) && !(passive && isValue(name, path)))
                                .map(name -> undefined(element, name))
                        : passive ? Optional.empty() : Optional.of(unnamed(element));
        };
    }

    private static boolean isKnown(Word name, ScopePath path) {
        return path.scopes().stream().anyMatch(scope -> scope.hasModel(name.text()));
    }

    /** A resistor's bare word may be a parameter; a value that never was one is told by another rule. */
    private static boolean isValue(Word name, ScopePath path) {
        return path.parameter(name.text()).isPresent() || name.text().matches("(?i)nan|inf|infinity|undefined|null");
    }

    private LintFinding undefined(Element element, Word name) {
        return error(
                name.place(),
                element.kind().words() + " " + element.name().text() + " names the model " + name.text()
                        + ", which is not defined",
                "the simulator stops",
                ".model " + name.text() + " with its parameters, or .include of the file that holds it");
    }

    private LintFinding unnamed(Element element) {
        return error(
                element.statement().whole(),
                element.kind().words() + " " + element.name().text() + " names no model",
                "the simulator stops, or takes a node for the model",
                "the model's name behind the last node");
    }
}
