package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts every subcircuit in place of its use; one that is missing or contains itself stays an element. */
final class Flattener {

    private final String file;
    private final Set<String> global = new HashSet<>(Set.of(Circuit.GROUND));
    private final List<FlatElement> flat = new ArrayList<>();

    Flattener(String file, List<Directive> directives) {
        this.file = file;
        directives.stream()
                .filter(directive -> directive.isOneOf(Set.of(".global")))
                .flatMap(directive -> directive.words().stream())
                .forEach(node -> global.add(node.lower()));
    }

    Circuit flatten(Scope deck) {
        expand(new ScopePath(List.of(deck)), new Instance("", Map.of()), 0);
        return new Circuit(flat);
    }

    private void expand(ScopePath path, Instance instance, int depth) {
        for (Element element : path.scope().elements()) {
            Optional<ScopePath> inner = depth < Limits.DEPTH ? definition(path, element) : Optional.empty();
            FlatElement placed = instance.place(element);
            if (inner.isPresent()) {
                expand(inner.get(), instance.into(element, inner.get().scope(), placed.nodes()), depth + 1);
            } else {
                flat.add(placed);
                Limits.checkElements(flat.size(), file);
            }
        }
    }

    private static Optional<ScopePath> definition(ScopePath path, Element element) {
        Optional<ScopePath> inner = element.kind() == ElementKind.SUBCIRCUIT
                ? element.model().flatMap(name -> path.subcircuit(name.text()))
                : Optional.empty();
        return inner.filter(found -> !path.scopes().contains(found.scope()));
    }

    /** One use of a subcircuit: the prefix of its names and what its ports are connected to. */
    private final class Instance {
        private final String prefix;
        private final Map<String, String> ports;

        private Instance(String prefix, Map<String, String> ports) {
            this.prefix = prefix;
            this.ports = ports;
        }

        private Instance into(Element element, Scope scope, List<String> nodes) {
            Map<String, String> inner = new HashMap<>();
            for (int index = 0; index < Math.min(nodes.size(), scope.ports().size()); index++) {
                inner.put(scope.ports().get(index).lower(), nodes.get(index));
            }
            return new Instance(prefix + element.name().lower() + ".", inner);
        }

        private FlatElement place(Element element) {
            List<Word> reads = element.expression().map(Expression::nodes).orElse(List.of());
            return new FlatElement(
                    element, name(element), nodes(element.nodes()), nodes(element.controls()), nodes(reads));
        }

        private String name(Element element) {
            String name = element.name().lower();
            return prefix.isEmpty() ? name : name.charAt(0) + "." + prefix + name;
        }

        private List<String> nodes(List<Word> words) {
            return words.stream().map(word -> node(word.lower())).toList();
        }

        private String node(String name) {
            String node = name.equals("gnd") ? Circuit.GROUND : name;
            return global.contains(node) ? node : ports.getOrDefault(node, prefix + node);
        }
    }
}
