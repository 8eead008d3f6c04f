package lampproof.lint.netlist;

import java.util.List;
import java.util.Optional;

/**
 * The deck itself, or a subcircuit's definition.
 *
 * @param name the subcircuit's name; empty for the deck itself
 * @param ports the subcircuit's terminals, in order
 * @param elements its elements
 * @param models its models
 * @param scopes the subcircuits defined in it
 * @param parameters its parameters
 */
public record Scope(
        Optional<Word> name,
        List<Word> ports,
        List<Element> elements,
        List<Model> models,
        List<Scope> scopes,
        List<Parameter> parameters) {

    public Scope {
        ports = List.copyOf(ports);
        elements = List.copyOf(elements);
        models = List.copyOf(models);
        scopes = List.copyOf(scopes);
        parameters = List.copyOf(parameters);
    }

    /** The subcircuit of that name that is defined here; the first where there are several. */
    public Optional<Scope> scope(String wanted) {
        return scopes.stream()
                .filter(scope -> scope.name().map(name -> name.is(wanted)).orElse(false))
                .findFirst();
    }

    /** The model of that name that is defined here; the first where there are several. */
    public Optional<Model> model(String wanted) {
        return models.stream().filter(model -> model.name().is(wanted)).findFirst();
    }

    /** The value of the parameter of that name; the last where there are several. */
    public Optional<Word> parameter(String wanted) {
        return parameters.stream()
                .filter(parameter -> parameter.name().is(wanted))
                .map(Parameter::value)
                .reduce((first, last) -> last);
    }
}
