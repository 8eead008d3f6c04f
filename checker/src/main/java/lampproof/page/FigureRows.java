package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;

/**
 * Every figure of a run as a row, grouped by outcome: what needs a look comes first.
 *
 * @param groups the groups that have a row
 */
record FigureRows(List<Group> groups) {

    private static final List<Outcome> ORDER =
            List.of(Outcome.DIFFERS, Outcome.NO_VERDICT, Outcome.AGREES, Outcome.PREDICTED_ONLY);

    /**
     * Figures of one outcome.
     *
     * @param outcome in words
     * @param reason why, where it is the same for all; else empty
     * @param rows a row for each figure
     */
    record Group(String outcome, String reason, List<Row> rows) {}

    /**
     * A figure.
     *
     * @param name its name
     * @param definition what it is
     * @param place its deck and corner
     * @param values its values
     * @param reason why it has its outcome, where the group does not say so; else empty
     */
    record Row(String name, String definition, String place, Values values, String reason) {}

    /**
     * The values of a figure, empty where there is none.
     *
     * @param predicted predicted value
     * @param simulated simulated value
     * @param allowed distance that is allowed between them
     * @param unit unit of these
     * @param deviation of the simulated value from the predicted one [%]
     */
    record Values(String predicted, String simulated, String allowed, String unit, String deviation) {}

    static FigureRows of(RunVerdict run) {
        List<Group> groups = new ArrayList<>();
        for (Outcome outcome : ORDER) {
            List<Verdict> verdicts = run.verdicts().stream()
                    .filter(verdict -> verdict.outcome() == outcome)
                    .toList();
            if (!verdicts.isEmpty()) {
                groups.add(group(outcome, verdicts));
            }
        }
        return new FigureRows(groups);
    }

    private static Group group(Outcome outcome, List<Verdict> verdicts) {
        List<String> reasons = verdicts.stream().map(Verdict::reason).distinct().toList();
        String common = reasons.size() == 1 ? reasons.get(0) : "";
        return new Group(
                outcome.words(),
                common,
                verdicts.stream().map(verdict -> row(verdict, common)).toList());
    }

    private static Row row(Verdict verdict, String common) {
        Prediction prediction = verdict.prediction();
        return new Row(
                prediction.figure().name(),
                prediction.figure().definition(),
                place(prediction),
                values(verdict),
                verdict.reason().equals(common) ? "" : verdict.reason());
    }

    private static Values values(Verdict verdict) {
        Prediction prediction = verdict.prediction();
        ColumnText text =
                ColumnText.about(prediction.value(), prediction.figure().unit());
        return new Values(
                text.column(OptionalDouble.of(prediction.value())),
                text.column(verdict.simulated()),
                text.column(OptionalDouble.of(verdict.allowed())),
                text.scaledUnit(),
                ColumnText.percent(verdict.deviation()));
    }

    private static String place(Prediction prediction) {
        String deck = prediction.deck().map(DeckKind::word).orElse("none");
        return prediction.corner() == Corner.NOMINAL
                ? deck
                : deck + ", " + prediction.corner().word();
    }
}
