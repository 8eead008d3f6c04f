package lampproof.physics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Temperatures of parts in a housing, from heat sources and thermal resistances between them and the ambient.
 *
 * <p>{@code sum over paths of (Ti - Tj) / Rij = Pi} at every node, solved by LU decomposition.
 *
 * <p>Valid in steady state with constant resistances; several paths between two nodes are in parallel. Neglects the
 * growth of convection and radiation with temperature.
 *
 * <p>Source: heat balance; one resistance: J. M. Jacob, Power Electronics: Principles and Applications, ex. 6.7.
 */
public final class ThermalNetwork {

    /** The name of the node that keeps its temperature. */
    public static final String AMBIENT = "ambient";

    private static final double SINGULARITY = 1e-15;

    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final DecompositionSolver solver;

    /** The network of the given paths. */
    public ThermalNetwork(List<Path> paths) {
        for (Path path : paths) {
            addNode(path.from);
            addNode(path.to);
        }
        solver = new LUDecomposition(conductances(paths), SINGULARITY).getSolver();
        if (!solver.isNonSingular()) {
            throw new IllegalArgumentException("some of the nodes " + nodes.keySet() + " have no path to " + AMBIENT);
        }
    }

    /**
     * Temperature of every node.
     *
     * @param ambient ambient temperature [K]
     * @param heat heat [W] of each node that has a source
     * @return temperature of each node [K], in the order of the paths
     */
    public Map<String, Double> temperatures(double ambient, Map<String, Double> heat) {
        RealVector sources = new ArrayRealVector(nodes.size());
        heat.forEach((node, power) -> sources.setEntry(index(node), power));
        RealVector rise = solver.solve(sources);
        Map<String, Double> temperatures = new LinkedHashMap<>();
        nodes.forEach((node, index) -> temperatures.put(node, ambient + rise.getEntry(index)));
        return temperatures;
    }

    private void addNode(String node) {
        if (!node.equals(AMBIENT)) {
            nodes.putIfAbsent(node, nodes.size());
        }
    }

    private RealMatrix conductances(List<Path> paths) {
        Require.positive("number of nodes besides " + AMBIENT, nodes.size());
        RealMatrix matrix = MatrixUtils.createRealMatrix(nodes.size(), nodes.size());
        for (Path path : paths) {
            double conductance = 1 / path.resistance;
            addToRow(matrix, path.from, path.to, conductance);
            addToRow(matrix, path.to, path.from, conductance);
        }
        return matrix;
    }

    private void addToRow(RealMatrix matrix, String node, String other, double conductance) {
        if (node.equals(AMBIENT)) {
            return;
        }
        matrix.addToEntry(index(node), index(node), conductance);
        if (!other.equals(AMBIENT)) {
            matrix.addToEntry(index(node), index(other), -conductance);
        }
    }

    private int index(String node) {
        Integer index = nodes.get(node);
        if (index == null) {
            throw new IllegalArgumentException("no thermal node '" + node + "', nodes are " + nodes.keySet());
        }
        return index;
    }

    /**
     * A thermal resistance between two nodes.
     *
     * @param from one node
     * @param to the other node
     * @param resistance thermal resistance [K/W]
     */
    public record Path(String from, String to, double resistance) {

        /** Checks the resistance and that the ends differ. */
        public Path {
            Require.positive("thermal resistance [K/W] " + from + " - " + to, resistance);
            if (from.equals(to)) {
                throw new IllegalArgumentException("thermal path must join two nodes, found '" + from + "' twice");
            }
        }
    }
}
