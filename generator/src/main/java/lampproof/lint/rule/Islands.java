package lampproof.lint.rule;

import java.util.HashMap;
import java.util.Map;

/** Nodes that are connected with each other, grown one connection at a time. */
final class Islands {

    private final Map<String, String> parents = new HashMap<>();

    /** Connects two nodes; false when they were connected already. */
    boolean connect(String one, String other) {
        return !of(one).equals(of(other)) && parents.put(of(one), of(other)) != null;
    }

    /** The node that stands for the island of a node. */
    String of(String node) {
        String root = parents.computeIfAbsent(node, itself -> itself);
        while (!root.equals(parents.get(root))) {
            root = parents.merge(root, parents.get(parents.get(root)), (parent, grandparent) -> grandparent);
        }
        return root;
    }

    /** Whether two nodes are on one island. */
    boolean connected(String one, String other) {
        return of(one).equals(of(other));
    }
}
