package lampproof.choice;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The order of candidates: those that keep the rules first, then by index.
 *
 * <p>The index of a candidate is the product, over the criteria, of the least burden of all candidates over its own, each to the
 * power of its weight: 1 for a candidate that is best in everything.
 */
public final class Ranking {

    private final Weights weights;
    private final Map<Criterion, Double> least = new EnumMap<>(Criterion.class);

    /** A ranking of candidates, of which there must be one. */
    Ranking(List<Candidate> candidates, Weights weights) {
        this.weights = weights;
        for (Criterion criterion : Criterion.values()) {
            least.put(
                    criterion,
                    candidates.stream().mapToDouble(criterion::burden).min().orElseThrow());
        }
    }

    /** The least burden of all candidates over that of a candidate [-]: 1 for the best. */
    public double ratio(Criterion criterion, Candidate candidate) {
        return least.get(criterion) / criterion.burden(candidate);
    }

    /** The index of a candidate [-], above 0 and at most 1. */
    public double index(Candidate candidate) {
        double index = 1;
        for (Criterion criterion : Criterion.values()) {
            index *= Math.pow(ratio(criterion, candidate), weights.of(criterion));
        }
        return index;
    }

    /** The best first. */
    Comparator<Candidate> order() {
        return Comparator.comparing(Candidate::keepsRules)
                .thenComparingDouble(this::index)
                .reversed();
    }
}
