package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;

/**
 * An element of the flattened circuit: once for each time its subcircuit is used.
 *
 * @param element the element as written
 * @param name its name in the whole circuit, in lower case, as in {@code v.xbridge.vmeter}
 * @param nodes the nodes that its terminals are connected to; ground is {@code 0}
 * @param controls the nodes that it senses
 * @param reads the nodes whose voltage its expression reads
 */
public record FlatElement(Element element, String name, List<String> nodes, List<String> controls, List<String> reads) {

    public FlatElement {
        nodes = List.copyOf(nodes);
        controls = List.copyOf(controls);
        reads = List.copyOf(reads);
    }

    /** Every node it touches or reads: terminals, then controls, then reads. */
    public List<String> allNodes() {
        List<String> all = new ArrayList<>(nodes);
        all.addAll(controls);
        all.addAll(reads);
        return all;
    }

    /** Where each of {@link #allNodes} is written, in the same order. */
    public List<Word> words() {
        List<Word> words = new ArrayList<>(element.nodes());
        words.addAll(element.controls());
        element.expression().ifPresent(expression -> words.addAll(expression.nodes()));
        return words;
    }
}
