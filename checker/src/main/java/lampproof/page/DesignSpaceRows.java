package lampproof.page;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;
import lampproof.choice.Criterion;
import lampproof.unit.PlainNumber;

/**
 * The best driver of each converter, law and way of smoothing.
 *
 * @param criteria how much each criterion counts
 * @param drivers a row for each driver
 * @param counts how many drivers there are, in a sentence
 */
record DesignSpaceRows(List<Weight> criteria, List<Row> drivers, String counts) {

    /**
     * How much a criterion counts.
     *
     * @param name the criterion
     * @param weight its weight
     */
    record Weight(String name, String weight) {}

    /**
     * A driver.
     *
     * @param text its arrangement
     * @param index its index
     * @param cells a cell for each criterion
     * @param marks what else is to be said of it
     */
    record Row(String text, String index, List<Cell> cells, Marks marks) {}

    /**
     * How a driver does in a criterion.
     *
     * @param name the criterion
     * @param value its value with its unit
     * @param ratio the share of the index that it leaves
     */
    record Cell(String name, String value, String ratio) {}

    /**
     * What marks a driver.
     *
     * @param finalist whether it is at the top of the page
     * @param pareto whether no other is better in one criterion without being worse in another
     * @param rules whether it keeps the rules
     */
    record Marks(boolean finalist, boolean pareto, boolean rules) {}

    static DesignSpaceRows of(Comparison comparison) {
        Set<Candidate> pareto = Set.copyOf(comparison.space().pareto());
        return new DesignSpaceRows(
                criteria(comparison),
                comparison.bestOfEach().stream()
                        .map(candidate -> row(comparison, candidate, pareto.contains(candidate)))
                        .toList(),
                comparison.space().counts());
    }

    private static List<Weight> criteria(Comparison comparison) {
        return Arrays.stream(Criterion.values())
                .map(one -> new Weight(
                        one.word(), PlainNumber.significant(comparison.weights().of(one), 3)))
                .toList();
    }

    private static Row row(Comparison comparison, Candidate candidate, boolean pareto) {
        return new Row(
                candidate.arrangement().text(),
                PlainNumber.fixed(comparison.ranking().index(candidate), 3),
                Arrays.stream(Criterion.values())
                        .map(criterion -> cell(comparison, candidate, criterion))
                        .toList(),
                new Marks(comparison.finalists().contains(candidate), pareto, candidate.keepsRules()));
    }

    private static Cell cell(Comparison comparison, Candidate candidate, Criterion criterion) {
        return new Cell(
                criterion.word(),
                SideBySide.text(Characteristic.named(criterion.characteristic()), candidate),
                PlainNumber.fixed(comparison.ranking().ratio(criterion, candidate), 2));
    }
}
