package lampproof.prediction;

import java.util.EnumMap;
import java.util.Map;
import lampproof.design.Design;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Amount;
import lampproof.unit.Engineering;

/**
 * A design solved at the typical line voltage, and at the least and the greatest one of the spec where they differ from it,
 * with the string current kept.
 *
 * @param solutions its steady states
 */
public record LineCorners(Map<Corner, Solution> solutions) {

    /** Copies the solutions. */
    public LineCorners {
        solutions = new EnumMap<>(solutions);
    }

    /**
     * Solves a design.
     *
     * @throws UserFault when a part becomes hotter than it is rated for, or physics forbids one of the line voltages
     */
    public static LineCorners of(Design design) {
        Amount line = design.values().amount("line.voltage").orElseThrow();
        Map<Corner, Solution> solutions = new EnumMap<>(Corner.class);
        solutions.put(Corner.NOMINAL, rated(design));
        if (line.least() < line.typical()) {
            solutions.put(Corner.LOW_LINE, at(design, line.least()));
        }
        if (line.most() > line.typical()) {
            solutions.put(Corner.HIGH_LINE, at(design, line.most()));
        }
        return new LineCorners(solutions);
    }

    /** The typical line voltage alone. */
    public static LineCorners only(Solution solution) {
        return new LineCorners(Map.of(Corner.NOMINAL, solution));
    }

    /** The steady state at the typical line voltage. */
    public Solution nominal() {
        return solutions.get(Corner.NOMINAL);
    }

    /** The steady state at the greatest line voltage. */
    public Solution highest() {
        return solutions.getOrDefault(Corner.HIGH_LINE, nominal());
    }

    /** A fault that the typical line voltage does not have tells at which one it has it. */
    private static Solution at(Design design, double voltage) {
        try {
            return rated(design.at(voltage));
        } catch (UserFault fault) {
            String at = " with " + Engineering.digits(4).text(voltage, "V") + " on the line";
            throw UserFault.badInput(fault.findings().stream()
                    .map(one -> new Finding(one.what() + at, one.where(), one.found(), one.allowed(), one.next()))
                    .toList());
        }
    }

    private static Solution rated(Design design) {
        Solution solution = Solution.of(design.driver());
        solution.temperatures().requireRated();
        return solution;
    }
}
