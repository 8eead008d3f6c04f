package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A scope with the scopes around it, in which its names are looked up.
 *
 * @param scopes the scopes from the innermost to the deck itself
 */
public record ScopePath(List<Scope> scopes) {
    public ScopePath {
        scopes = List.copyOf(scopes);
    }

    /** The innermost scope. */
    public Scope scope() {
        return scopes.get(0);
    }

    /** The path to a scope that is defined in the innermost one. */
    public ScopePath into(Scope inner) {
        List<Scope> longer = new ArrayList<>(List.of(inner));
        longer.addAll(scopes);
        return new ScopePath(longer);
    }

    /** Whether a name means a model here. */
    public boolean hasModel(String name) {
        return scopes.stream().anyMatch(scope -> scope.hasModel(name));
    }

    /** The path to the subcircuit that a name means here. */
    public Optional<ScopePath> subcircuit(String name) {
        for (int depth = 0; depth < scopes.size(); depth++) {
            ScopePath outer = new ScopePath(scopes.subList(depth, scopes.size()));
            Optional<Scope> found = outer.scope().scope(name);
            if (found.isPresent()) {
                return found.map(outer::into);
            }
        }
        return Optional.empty();
    }

    /** The path to the subcircuit that an element uses. */
    public Optional<ScopePath> definition(Element element) {
        return element.kind() == ElementKind.SUBCIRCUIT
                ? element.model().flatMap(name -> subcircuit(name.text()))
                : Optional.empty();
    }

    /** The value of the parameter that a name means here. */
    public Optional<Word> parameter(String name) {
        return scopes.stream()
                .map(scope -> scope.parameter(name))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** This path and the paths to all subcircuits defined in it, however deep. */
    public Stream<ScopePath> all() {
        return Stream.concat(
                Stream.of(this), scope().scopes().stream().map(this::into).flatMap(ScopePath::all));
    }
}
