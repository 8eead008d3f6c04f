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
    private int count;

    Flattener(String file, List<Directive> directives) {
        this.file = file;
        directives.stream()
                .filter(directive -> directive.isOneOf(Set.of(".global")))
                .flatMap(directive -> directive.words().stream())
                .forEach(node -> global.add(node.lower()));
    }

    Circuit flatten(Scope deck) {
        expand(new ScopePath(List.of(deck)), new Instance("", Map.of(), Set.of()));
        return new Circuit(flat);
    }

    private void expand(ScopePath path, Instance instance) {
        for (Element element : path.scope().elements()) {
            Limits.checkElements(++count, file);
            Optional<ScopePath> inner = path.definition(element).filter(found -> !instance.isInside(found.scope()));
            FlatElement placed = instance.place(element);
            if (inner.isPresent()) {
                expand(inner.get(), instance.into(element, inner.get().scope(), placed.nodes()));
            } else {
                flat.add(placed);
            }
        }
    }

    /** One use of a subcircuit: the prefix of its names, what its ports are connected to, what it is itself part of. */
    private final class Instance {
        private final String prefix;
        private final Map<String, String> ports;
        private final Set<Word> definitions;

        private Instance(String prefix, Map<String, String> ports, Set<Word> definitions) {
            this.prefix = prefix;
            this.ports = ports;
            this.definitions = definitions;
        }

        private boolean isInside(Scope scope) {
            return scope.name().map(definitions::contains).orElse(false);
        }

        private Instance into(Element element, Scope scope, List<String> nodes) {
            Map<String, String> inner = new HashMap<>();
            for (int index = 0; index < Math.min(nodes.size(), scope.ports().size()); index++) {
                inner.put(scope.ports().get(index).lower(), nodes.get(index));
            }
            Set<Word> outer = new HashSet<>(definitions);
            scope.name().ifPresent(outer::add);
            return new Instance(prefix + element.name().lower() + ".", inner, outer);
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
