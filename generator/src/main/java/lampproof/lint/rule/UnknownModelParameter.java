package lampproof.lint.rule;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Model;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.SpiceNumber;

/** A model parameter that the simulator does not know for that kind of model, and ignores. */
final class UnknownModelParameter implements Rule {

    /** So many names fit into one line of advice [-]. */
    private static final int FEW = 12;

    @Override
    public String name() {
        return "unknown-model-parameter";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes().flatMap(path -> path.scope().models().stream().flatMap(model -> check(model, path)));
    }

    private Stream<LintFinding> check(Model model, ScopePath path) {
        Optional<Set<String>> known =
                isBasicLevel(model, path) ? ModelParameters.of(model.kind().lower()) : Optional.empty();
        return known.stream()
                .flatMap(names -> model.parameters().stream()
                        .filter(parameter -> !names.contains(parameter.name().lower()))
                        .map(parameter -> finding(model, parameter, names)));
    }

    /** Higher levels are other models under the same kind, each with its own parameters. */
    private static boolean isBasicLevel(Model model, ScopePath path) {
        OptionalDouble level = model.parameters().stream()
                .filter(parameter -> parameter.name().is("level"))
                .map(parameter -> SpiceNumber.valueOf(parameter.value(), path).orElse(Double.NaN))
                .mapToDouble(Double::doubleValue)
                .findFirst();
        double highest = model.kind().lower().endsWith("mos") ? 3 : 1;
        return level.orElse(1) <= highest;
    }

    private LintFinding finding(Model model, Parameter parameter, Set<String> names) {
        String name = parameter.name().text();
        String kind = model.kind().lower();
        return warning(
                parameter.name().place(),
                "a model of kind " + kind + " has no parameter " + name,
                "the simulator ignores it with a remark in the log: the model is not the one that was meant",
                advice(kind, parameter.name().lower(), names));
    }

    private static String advice(String kind, String name, Set<String> names) {
        String alike = names.stream()
                .filter(known -> names.size() <= FEW || known.charAt(0) == name.charAt(0))
                .limit(FEW)
                .collect(Collectors.joining(" "));
        return alike.isEmpty()
                ? "nothing, or what " + kind + " calls it"
                : "nothing, or what " + kind + " calls it: " + alike;
    }
}
