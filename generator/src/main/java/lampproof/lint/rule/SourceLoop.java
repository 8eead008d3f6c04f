package lampproof.lint.rule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;

/** A loop of voltage sources and inductors, in which the current is not defined. */
final class SourceLoop implements Rule {

    @Override
    public String name() {
        return "source-loop";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        List<FlatElement> elements = netlist.circuit().elements();
        Stream<FlatElement> sources =
                elements.stream().filter(flat -> flat.element().setsVoltage());
        Stream<FlatElement> inductors =
                elements.stream().filter(flat -> isInductor(flat) && netlist.usesOperatingPoint());
        Tree tree = new Tree();
        return Stream.concat(sources, inductors).flatMap(flat -> join(tree, flat).stream());
    }

    private static boolean isInductor(FlatElement flat) {
        return flat.element().kind() == ElementKind.INDUCTOR;
    }

    private Optional<LintFinding> join(Tree tree, FlatElement flat) {
        if (flat.nodes().size() < 2 || tree.add(flat)) {
            return Optional.empty();
        }
        List<FlatElement> loop = tree.path(flat.nodes().get(0), flat.nodes().get(1));
        loop.add(flat);
        return Optional.of(finding(flat, loop));
    }

    private LintFinding finding(FlatElement last, List<FlatElement> loop) {
        String names = String.join(
                ", ", loop.stream().map(flat -> flat.element().name().text()).toList());
        String what = loop.size() == 1
                ? names + " is connected with both ends to one node"
                : names + " form a loop of " + kinds(loop);
        return error(
                last.element().statement().whole(),
                what,
                "the current round the loop is not defined: the simulator reports a singular matrix and stops or invents one",
                "a resistance in the loop, for example 1e-3 ohm in series with "
                        + last.element().name().text());
    }

    private static String kinds(List<FlatElement> loop) {
        long inductors = loop.stream().filter(SourceLoop::isInductor).count();
        return inductors == 0
                ? "voltage sources"
                : inductors == loop.size() ? "inductors" : "voltage sources and inductors";
    }

    /** Elements that connect nodes without a loop. */
    private static final class Tree {
        private final Islands islands = new Islands();
        private final Map<String, List<FlatElement>> branches = new HashMap<>();

        private boolean add(FlatElement flat) {
            boolean added = islands.connect(flat.nodes().get(0), flat.nodes().get(1));
            if (added) {
                branches.computeIfAbsent(flat.nodes().get(0), node -> new ArrayList<>())
                        .add(flat);
                branches.computeIfAbsent(flat.nodes().get(1), node -> new ArrayList<>())
                        .add(flat);
            }
            return added;
        }

        /** The elements on the way from one node to another that is connected with it. */
        private List<FlatElement> path(String from, String to) {
            Map<String, FlatElement> reachedBy = new HashMap<>();
            Set<String> seen = new HashSet<>(Set.of(to));
            Deque<String> next = new ArrayDeque<>(List.of(to));
            while (!seen.contains(from)) {
                String node = next.remove();
                for (FlatElement flat : branches.getOrDefault(node, List.of())) {
                    String end = otherEnd(flat, node);
                    if (seen.add(end)) {
                        reachedBy.put(end, flat);
                        next.add(end);
                    }
                }
            }
            return walk(from, to, reachedBy);
        }

        private static List<FlatElement> walk(String from, String to, Map<String, FlatElement> reachedBy) {
            List<FlatElement> path = new ArrayList<>();
            for (String node = from; !node.equals(to); node = otherEnd(reachedBy.get(node), node)) {
                path.add(reachedBy.get(node));
            }
            return path;
        }

        private static String otherEnd(FlatElement flat, String node) {
            return flat.nodes().get(0).equals(node)
                    ? flat.nodes().get(1)
                    : flat.nodes().get(0);
        }
    }
}
