package lampproof.lint.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.lint.netlist.Circuit;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Word;

/**
 * Nodes that are connected with each other but not with ground at the operating point.
 *
 * @param nodes their names, in the order of the deck
 * @param place where the first of them is written first
 * @param feeder a current source that feeds into or out of them, if there is one
 */
record FloatingIsland(List<String> nodes, Place place, Optional<Element> feeder) {

    /**
     * A node as an element names it.
     *
     * @param node the node
     * @param word where it is written
     * @param terminalOf the element, when the node carries its current
     */
    private record Mention(String node, Word word, Optional<FlatElement> terminalOf) {}

    static List<FloatingIsland> of(Netlist netlist) {
        Islands islands = DcPaths.of(netlist.circuit());
        Map<String, List<Mention>> mentions = netlist.circuit().elements().stream()
                .flatMap(FloatingIsland::mentions)
                .filter(mention -> !islands.connected(mention.node(), Circuit.GROUND))
                .collect(Collectors.groupingBy(
                        mention -> islands.of(mention.node()), LinkedHashMap::new, Collectors.toList()));
        return mentions.values().stream().map(island -> of(island, islands)).toList();
    }

    private static Stream<Mention> mentions(FlatElement flat) {
        List<String> nodes = flat.allNodes();
        List<Word> words = flat.words();
        return IntStream.range(0, nodes.size())
                .mapToObj(at -> new Mention(
                        nodes.get(at), words.get(at), at < flat.nodes().size() ? Optional.of(flat) : Optional.empty()));
    }

    private static FloatingIsland of(List<Mention> island, Islands islands) {
        Optional<Element> feeder = island.stream()
                .flatMap(mention -> mention.terminalOf().stream())
                .filter(flat -> isFeeder(flat, islands))
                .map(FlatElement::element)
                .findFirst();
        List<String> nodes = island.stream().map(Mention::node).distinct().toList();
        return new FloatingIsland(nodes, island.get(0).word().place(), feeder);
    }

    private static boolean isFeeder(FlatElement flat, Islands islands) {
        return flat.element().setsCurrent()
                && flat.nodes().size() == 2
                && !islands.connected(flat.nodes().get(0), flat.nodes().get(1));
    }

    /** The nodes in a sentence, with its verb. */
    String words(String verb, String plural) {
        return switch (nodes.size()) {
            case 1 -> "node " + nodes.get(0) + " " + verb;
            case 2, 3 -> "nodes " + String.join(", ", nodes) + " " + plural;
            default ->
                "nodes " + String.join(", ", nodes.subList(0, 3)) + " and " + (nodes.size() - 3) + " more " + plural;
        };
    }
}
