package lampproof.page;

import java.util.List;
import lampproof.choice.Comparison;
import lampproof.choice.WeightVariation;

/**
 * Who would win if the criteria counted otherwise.
 *
 * @param weighings a row for each way to weigh them
 */
record ReweighedRows(List<Row> weighings) {

    /**
     * A way to weigh the criteria.
     *
     * @param weighing how they are weighed, in words
     * @param winner arrangement of the winner
     * @param indices its index, and that of its rival
     */
    record Row(String weighing, String winner, String indices) {}

    static ReweighedRows of(Comparison comparison) {
        return new ReweighedRows(
                WeightVariation.of(comparison).stream().map(ReweighedRows::row).toList());
    }

    private static Row row(WeightVariation one) {
        return new Row(one.weighing(), one.comparison().winner().arrangement().text(), one.indices());
    }
}
