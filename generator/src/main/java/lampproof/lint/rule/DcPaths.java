package lampproof.lint.rule;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lampproof.lint.netlist.Circuit;
import lampproof.lint.netlist.FlatElement;

/**
 * The nodes that are connected at the operating point, where a capacitor and a current source are open.
 *
 * <p>A junction, a channel and a switch conduct in every state, be it by a leakage. What only the simulator can look
 * into is taken to be connected to ground, so that nothing is accused that may be right.
 */
final class DcPaths {

    private DcPaths() {}

    static Islands of(Circuit circuit) {
        Islands islands = new Islands();
        for (FlatElement element : circuit.elements()) {
            connect(islands, element);
        }
        return islands;
    }

    private static void connect(Islands islands, FlatElement element) {
        switch (element.element().kind()) {
            case CAPACITOR, CURRENT_SOURCE, CURRENT_CONTROLLED_CURRENT, COUPLING -> {}
            case BEHAVIOURAL_SOURCE, VOLTAGE_CONTROLLED_CURRENT -> source(islands, element);
            case BIPOLAR -> pairs(islands, element, 0, 1, 1, 2, 3, 0);
            case MOSFET -> pairs(islands, element, 0, 2, 3, 2);
            case JFET, MESFET -> pairs(islands, element, 0, 2, 1, 2);
            case LINE -> pairs(islands, element, 0, 2, 1, 3);
            case SUBCIRCUIT, OPAQUE -> element.nodes().forEach(node -> islands.connect(node, Circuit.GROUND));
            default -> pairs(islands, element, 0, 1);
        }
    }

    /** A current source that is governed by its own voltage is a resistor. */
    private static void source(Islands islands, FlatElement element) {
        Set<String> sensed = Set.copyOf(sensed(element));
        if (element.element().setsVoltage() || element.nodes().stream().anyMatch(node -> isSensed(node, sensed))) {
            pairs(islands, element, 0, 1);
        }
    }

    private static boolean isSensed(String node, Set<String> sensed) {
        return !node.equals(Circuit.GROUND) && sensed.contains(node);
    }

    private static List<String> sensed(FlatElement element) {
        List<String> all = element.allNodes();
        return all.subList(element.nodes().size(), all.size());
    }

    private static void pairs(Islands islands, FlatElement element, int... ends) {
        List<String> nodes = element.nodes();
        IntStream.range(0, ends.length / 2)
                .map(pair -> 2 * pair)
                .filter(at -> ends[at] < nodes.size() && ends[at + 1] < nodes.size())
                .forEach(at -> islands.connect(nodes.get(ends[at]), nodes.get(ends[at + 1])));
    }
}
