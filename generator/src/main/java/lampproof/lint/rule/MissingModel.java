package lampproof.lint.rule;

import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
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
        if (element.kind().needsModel()) {
            return element.model().isEmpty()
                    ? Optional.of(unnamed(element))
                    : element.model()
                            .filter(name -> !path.hasModel(name.text()))
                            .map(name -> undefined(element, name));
        }
        boolean passive = element.kind() != ElementKind.SUBCIRCUIT && element.kind() != ElementKind.OPAQUE;
        return passive && element.values().isEmpty()
                ? element.model().filter(name -> !isValue(name, path)).map(name -> undefined(element, name))
                : Optional.empty();
    }

    /** A resistor's bare word may be a parameter; the print of a failed calculation is told by another rule. */
    private static boolean isValue(Word name, ScopePath path) {
        return path.hasModel(name.text()) || path.parameter(name.text()).isPresent() || NotANumber.isPrint(name);
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
