package lampproof.lint.rule;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Circuit;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** A node to which one terminal leads and nothing else; a node whose voltage is read somewhere has a use. */
final class OneConnection implements Rule {

    @Override
    public String name() {
        return "one-connection";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Map<String, Integer> uses = new HashMap<>();
        Map<String, Word> words = new LinkedHashMap<>();
        netlist.circuit().elements().forEach(element -> count(element, uses, words));
        Set<String> read = Vectors.of(netlist).map(Vectors.Vector::name).collect(Collectors.toSet());
        return words.entrySet().stream()
                .filter(node -> uses.get(node.getKey()) == 1 && !read.contains(node.getKey()))
                .map(node -> finding(node.getKey(), node.getValue()));
    }

    private static void count(FlatElement element, Map<String, Integer> uses, Map<String, Word> words) {
        List<String> nodes = element.allNodes();
        List<Word> places = element.words();
        for (int index = 0; index < nodes.size(); index++) {
            uses.merge(nodes.get(index), weight(element), Integer::sum);
            words.putIfAbsent(nodes.get(index), places.get(index));
        }
        words.remove(Circuit.GROUND);
    }

    /** What cannot be looked into may connect a node to anything. */
    private static int weight(FlatElement element) {
        ElementKind kind = element.element().kind();
        return kind == ElementKind.SUBCIRCUIT || kind == ElementKind.OPAQUE ? 2 : 1;
    }

    private LintFinding finding(String node, Word word) {
        return warning(
                word.place(),
                "node " + node + " has one connection",
                "a name is misspelt or a part is missing: no current can flow here",
                "the name of the node that was meant, or the missing part");
    }
}
