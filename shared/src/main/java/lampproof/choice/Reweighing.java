package lampproof.choice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Who would win if the criteria were weighed otherwise.
 *
 * @param weighing how they are weighed, in words
 * @param comparison the comparison that this gives
 */
public record Reweighing(String weighing, Comparison comparison) {

    /** Each criterion alone, each left out, and without what a table of invented points decides. */
    public static List<Reweighing> of(Comparison comparison) {
        List<Reweighing> all = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            all.add(with(comparison, criterion.word() + " alone", List.of(criterion), true));
        }
        for (Criterion criterion : Criterion.values()) {
            all.add(with(comparison, "without " + criterion.word(), List.of(criterion), false));
        }
        all.add(with(comparison, "without area and cost", List.of(Criterion.AREA, Criterion.COST), false));
        return all;
    }

    private static Reweighing with(Comparison asked, String weighing, List<Criterion> named, boolean count) {
        Map<Criterion, Double> weights = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            boolean counts = named.contains(criterion) == count;
            weights.put(criterion, counts ? 1.0 : 0.0);
        }
        return new Reweighing(
                weighing, Comparison.of(asked.field(), new Weights(weights)).orElseThrow());
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
        return String.format(Locale.ROOT, "%.3f", comparison.ranking().index(candidate));
    }
}
