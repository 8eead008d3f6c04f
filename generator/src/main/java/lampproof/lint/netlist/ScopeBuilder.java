package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects what stands between {@code .subckt} and {@code .ends}, or in the deck itself. */
final class ScopeBuilder {

    private final Optional<Word> name;
    private final List<Word> ports;
    private final List<Element> elements = new ArrayList<>();
    private final List<Model> models = new ArrayList<>();
    private final List<Scope> scopes = new ArrayList<>();
    private final List<Parameter> parameters = new ArrayList<>();

    private ScopeBuilder(Optional<Word> name, List<Word> ports) {
        this.name = name;
        this.ports = ports;
    }

    static ScopeBuilder deck() {
        return new ScopeBuilder(Optional.empty(), List.of());
    }

    /** A subcircuit from its heading: name, ports, and perhaps parameters. */
    static ScopeBuilder subcircuit(List<Word> heading) {
        List<Word> words = heading.stream().filter(word -> !word.is("params:")).toList();
        Arguments arguments = Arguments.of(words.subList(1, words.size()));
        Optional<Word> name = arguments.plain().stream().findFirst();
        ScopeBuilder builder = new ScopeBuilder(name, arguments.from(1));
        builder.parameters.addAll(arguments.named());
        return builder;
    }

    void addElement(Statement statement) {
        elements.add(ElementReader.read(statement));
    }

    void addModel(Statement statement, List<Word> words) {
        if (words.size() > 2) {
            Arguments arguments = Arguments.of(words.subList(3, words.size()));
            models.add(new Model(words.get(1), words.get(2), arguments.named(), statement));
        }
    }

    void addParameters(List<Word> words) {
        parameters.addAll(Arguments.of(words.subList(1, words.size())).named());
    }

    void addScope(Scope scope) {
        scopes.add(scope);
    }

    Scope build() {
        return new Scope(name, ports, elements, models, scopes, parameters);
    }
}
