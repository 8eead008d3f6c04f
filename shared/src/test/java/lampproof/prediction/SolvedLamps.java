package lampproof.prediction;

import lampproof.design.Sizing;
import lampproof.spec.Spec;

/** Solved drivers and their figures for tests. */
public final class SolvedLamps {

    private SolvedLamps() {}

    public static Solution solve(Spec spec) {
        return Solution.of(Sizing.of(spec).driver());
    }

    /** The value of a figure that no deck settles, or else that of its widest window. */
    public static double value(Solution solution, String figure) {
        return FigureCatalogue.entries().stream()
                .filter(entry -> entry.figure().name().equals(figure))
                .findFirst()
                .orElseThrow()
                .widest()
                .orElseThrow()
                .value()
                .applyAsDouble(solution);
    }
}
