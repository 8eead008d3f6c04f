package lampproof.choice;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.prediction.Corner;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.Prediction;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;

/**
 * Two designs of one's own, side by side.
 *
 * @param first the one
 * @param second the other
 * @param firstBill parts of the first with area and cost
 * @param secondBill parts of the second with area and cost
 */
public record DesignPair(
        PredictedDesign first, PredictedDesign second, BillOfMaterials firstBill, BillOfMaterials secondBill) {

    /** Figures that differ by less than this share of their tolerance have not moved [-]. */
    private static final double LEAST_CHANGE = 0.1;

    /**
     * A figure of both designs.
     *
     * @param first the prediction for the first design
     * @param second the prediction for the second design
     */
    public record Figure(Prediction first, Prediction second) {

        /** How far the figure moved over its tolerance, by which small shares and large voltages compare [-]. */
        public double change() {
            double moved = Math.abs(second.value() - first.value());
            double greatest = Math.max(Math.abs(first.value()), Math.abs(second.value()));
            return moved == 0 ? 0 : moved / first.figure().grade().tolerance().around(greatest);
        }
    }

    /**
     * A row of the spec that both designs do not share.
     *
     * @param name name of the row
     * @param first its row in the first design; empty if the design has no such row
     * @param second its row in the second design; empty if the design has no such row
     */
    public record Row(String name, Optional<SpecRow> first, Optional<SpecRow> second) {}

    /** Two predicted designs with part classes for area and cost. */
    public static DesignPair of(PredictedDesign first, PredictedDesign second, PartTable table) {
        return new DesignPair(first, second, bill(first, table), bill(second, table));
    }

    private static BillOfMaterials bill(PredictedDesign predicted, PartTable table) {
        return BillOfMaterials.of(predicted.design(), predicted.solution(), table);
    }

    /** The figures that moved at the typical line voltage, in the order of the catalogue. */
    public List<Figure> moved() {
        return first.predictions().stream()
                .filter(prediction -> prediction.corner() == Corner.NOMINAL)
                .flatMap(prediction -> of(prediction).stream())
                .filter(figure -> figure.change() >= LEAST_CHANGE)
                .toList();
    }

    private Optional<Figure> of(Prediction prediction) {
        return second.predictions().stream()
                .filter(other -> other.figure().equals(prediction.figure()))
                .filter(other -> other.deck().equals(prediction.deck()) && other.corner() == prediction.corner())
                .findFirst()
                .map(other -> new Figure(prediction, other));
    }

    private boolean isGiven(String name) {
        return Stream.of(first, second)
                .flatMap(design -> design.design().values().row(name).stream())
                .anyMatch(row -> row.origin() == Origin.GIVEN);
    }

    /** The rows of the filled-in specs that differ, those that were given first. */
    public List<Row> changedRows() {
        Set<String> names = new LinkedHashSet<>();
        Stream.of(first, second)
                .forEach(design -> names.addAll(design.design().values().names()));
        return names.stream()
                .sorted(Comparator.comparing(name -> !isGiven(name)))
                .map(name -> new Row(
                        name,
                        first.design().values().row(name),
                        second.design().values().row(name)))
                .filter(row ->
                        !row.first().map(SpecRow::setting).equals(row.second().map(SpecRow::setting)))
                .toList();
    }
}
