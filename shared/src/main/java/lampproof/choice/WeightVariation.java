package lampproof.choice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lampproof.unit.PlainNumber;

/**
 * The winner under other weights of the criteria.
 *
 * @param weighing how they are weighed, in words
 * @param comparison the comparison that this gives
 */
public record WeightVariation(String weighing, Comparison comparison) {

    /** Each criterion alone, each left out, and without what a table of invented points decides. */
    public static List<WeightVariation> of(Comparison comparison) {
        List<WeightVariation> all = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            all.add(with(comparison, criterion.word() + " alone", List.of(criterion), true));
        }
        for (Criterion criterion : Criterion.values()) {
            all.add(with(comparison, "without " + criterion.word(), List.of(criterion), false));
        }
        all.add(with(comparison, "without area and cost", List.of(Criterion.AREA, Criterion.COST), false));
        return all;
    }

    private static WeightVariation with(Comparison base, String weighing, List<Criterion> named, boolean count) {
        Map<Criterion, Double> weights = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            boolean counts = named.contains(criterion) == count;
            weights.put(criterion, counts ? 1.0 : 0.0);
        }
        return new WeightVariation(
                weighing, Comparison.of(base.space(), new Weights(weights)).orElseThrow());
    }

    /** The index of the winner and of its rival in words. */
    public String indices() {
        String first = index(comparison.winner());
        return comparison
                .rival()
                .map(rival -> first + " against " + index(rival))
                .orElse(first);
    }

    private String index(Candidate candidate) {
        return PlainNumber.fixed(comparison.ranking().index(candidate), 3);
    }
}
