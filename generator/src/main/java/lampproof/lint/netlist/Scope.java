package lampproof.lint.netlist;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The deck itself, or a subcircuit's definition. */
public final class Scope {

    private final Optional<Word> name;
    private final List<Word> ports;
    private final List<Element> elements;
    private final List<Model> models;
    private final List<Scope> scopes;
    private final List<Parameter> parameters;
    private final Set<String> modelNames = new HashSet<>();
    private final Map<String, Scope> scopesByName = new HashMap<>();
    private final Map<String, Word> valuesByName = new HashMap<>();

    Scope(
            Optional<Word> name,
            List<Word> ports,
            List<Element> elements,
            List<Model> models,
            List<Scope> scopes,
            List<Parameter> parameters) {
        this.name = name;
        this.ports = List.copyOf(ports);
        this.elements = List.copyOf(elements);
        this.models = List.copyOf(models);
        this.scopes = List.copyOf(scopes);
        this.parameters = List.copyOf(parameters);
        models.forEach(model -> modelNames.add(model.name().lower()));
        scopes.forEach(scope -> scope.name().ifPresent(each -> scopesByName.putIfAbsent(each.lower(), scope)));
        parameters.forEach(parameter -> valuesByName.put(parameter.name().lower(), parameter.value()));
    }

    /** The subcircuit's name; empty for the deck itself. */
    public Optional<Word> name() {
        return name;
    }

    /** The subcircuit's terminals, in order. */
    public List<Word> ports() {
        return ports;
    }

    /** Its elements. */
    public List<Element> elements() {
        return elements;
    }

    /** Its models. */
    public List<Model> models() {
        return models;
    }

    /** The subcircuits defined in it. */
    public List<Scope> scopes() {
        return scopes;
    }

    /** Its parameters. */
    public List<Parameter> parameters() {
        return parameters;
    }

    /** The subcircuit of that name that is defined here; the first where there are several. */
    public Optional<Scope> scope(String wanted) {
        return Optional.ofNullable(scopesByName.get(wanted.toLowerCase(Locale.ROOT)));
    }

    /** Whether there is a model of that name, or one of its bins that are called name.1, name.2 and so on. */
    public boolean hasModel(String wanted) {
        String lower = wanted.toLowerCase(Locale.ROOT);
        return modelNames.contains(lower) || modelNames.contains(lower + ".1");
    }

    /** The value of the parameter of that name; the last where there are several. */
    public Optional<Word> parameter(String wanted) {
        return Optional.ofNullable(valuesByName.get(wanted.toLowerCase(Locale.ROOT)));
    }
}
