package lampproof.page;

import java.util.List;
import lampproof.choice.Comparison;
import lampproof.choice.WeightVariation;

/**
 * The winners of a comparison with other weights of the criteria.
 *
 * @param variations a row for each set of weights
 */
record WeightVariationRows(List<Row> variations) {

    /**
     * A set of weights.
     *
     * @param weights the weights in words
     * @param winner arrangement of the winner
     * @param indices its index, and that of its rival
     */
    record Row(String weights, String winner, String indices) {}

    static WeightVariationRows of(Comparison comparison) {
        return new WeightVariationRows(WeightVariation.of(comparison).stream()
                .map(WeightVariationRows::row)
                .toList());
    }

    private static Row row(WeightVariation one) {
        return new Row(one.weighing(), one.comparison().winner().arrangement().text(), one.indices());
    }
}
