package lampproof.page;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.prediction.DeckKind;

/**
 * Every figure of a run: those that a deck settles grouped by outcome, those to be looked at first, then the others.
 *
 * @param groups the groups that have a row
 * @param predicted the figures that are predicted only
 */
record FigureRows(List<Group> groups, List<Predicted> predicted) {

    private static final List<Outcome> ORDER = List.of(Outcome.DIFFERS, Outcome.NO_VERDICT, Outcome.AGREES);

    /**
     * Figures of one outcome.
     *
     * @param outcome in words
     * @param reason the reason, where it is the same for all; else empty
     * @param rows a row for each figure
     */
    record Group(String outcome, String reason, List<Row> rows) {}

    /**
     * A figure that a deck settles.
     *
     * @param name its name
     * @param definition its definition
     * @param deck the deck
     * @param values its values
     * @param reason the reason of its outcome, where the group does not give it; else empty
     */
    record Row(String name, String definition, String deck, Values values, String reason) {}

    /**
     * The values of a figure, empty where there is none.
     *
     * @param predicted predicted value
     * @param simulated simulated value
     * @param allowed greatest difference between them that agrees
     * @param unit unit of these
     * @param deviation of the simulated value from the predicted one, with its unit
     */
    record Values(String predicted, String simulated, String allowed, String unit, String deviation) {}

    /**
     * A figure that no simulation settles.
     *
     * @param name its name
     * @param definition its definition
     * @param value its value
     * @param unit unit of the value
     */
    record Predicted(String name, String definition, String value, String unit) {}

    static FigureRows of(RunVerdict run) {
        return new FigureRows(
                ORDER.stream().flatMap(outcome -> group(run, outcome)).toList(),
                verdicts(run, Outcome.PREDICTED_ONLY, FigureRows::predicted));
    }

    private static Stream<Group> group(RunVerdict run, Outcome outcome) {
        List<String> reasons =
                verdicts(run, outcome, Verdict::reason).stream().distinct().toList();
        String common = reasons.size() == 1 ? reasons.get(0) : "";
        List<Row> rows = verdicts(run, outcome, verdict -> row(verdict, common));
        return rows.isEmpty() ? Stream.empty() : Stream.of(new Group(outcome.words(), common, rows));
    }

    private static <T> List<T> verdicts(RunVerdict run, Outcome outcome, Function<Verdict, T> row) {
        return run.verdicts().stream()
                .filter(verdict -> verdict.outcome() == outcome)
                .map(row)
                .toList();
    }

    private static Row row(Verdict verdict, String common) {
        return new Row(
                verdict.prediction().figure().name(),
                verdict.prediction().figure().definition(),
                verdict.prediction().deck().map(DeckKind::word).orElse(""),
                values(verdict),
                verdict.reason().equals(common) ? "" : verdict.reason());
    }

    private static Values values(Verdict verdict) {
        ColumnText text = text(verdict);
        return new Values(
                text.column(OptionalDouble.of(verdict.prediction().value())),
                text.column(verdict.simulated()),
                text.column(OptionalDouble.of(verdict.allowed())),
                text.scaledUnit(),
                ColumnText.deviation(verdict));
    }

    private static Predicted predicted(Verdict verdict) {
        ColumnText text = text(verdict);
        return new Predicted(
                verdict.prediction().figure().name(),
                verdict.prediction().figure().definition(),
                text.column(OptionalDouble.of(verdict.prediction().value())),
                text.scaledUnit());
    }

    private static ColumnText text(Verdict verdict) {
        return ColumnText.about(
                verdict.prediction().value(), verdict.prediction().figure().unit());
    }
}
