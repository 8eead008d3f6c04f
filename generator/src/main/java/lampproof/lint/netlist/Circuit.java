package lampproof.lint.netlist;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The circuit with every subcircuit put in place of its use.
 *
 * @param elements the elements, in the order in which the simulator meets them
 */
public record Circuit(List<FlatElement> elements) {
    /** The name of ground. */
    public static final String GROUND = "0";

    public Circuit {
        elements = List.copyOf(elements);
    }

    /** The names of all nodes, in lower case. */
    public Set<String> nodes() {
        return elements.stream()
                .flatMap(element -> element.allNodes().stream())
                .collect(Collectors.toUnmodifiableSet());
    }
}
