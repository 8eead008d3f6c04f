package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;

/** Every figure of a run as a row, grouped by outcome: what needs a look comes first. */
final class FigureRows {

    private static final List<Outcome> ORDER =
            List.of(Outcome.DIFFERS, Outcome.NO_VERDICT, Outcome.AGREES, Outcome.NOT_SIMULATED);

    private FigureRows() {}

    /** The groups that have a row. */
    static List<Map<String, Object>> groups(RunVerdict run) {
        List<Map<String, Object>> groups = new ArrayList<>();
        for (Outcome outcome : ORDER) {
            List<Verdict> verdicts = run.verdicts().stream()
                    .filter(verdict -> verdict.outcome() == outcome)
                    .toList();
            if (!verdicts.isEmpty()) {
                groups.add(group(outcome, verdicts));
            }
        }
        return groups;
    }

    private static Map<String, Object> group(Outcome outcome, List<Verdict> verdicts) {
        List<String> reasons = verdicts.stream().map(Verdict::reason).distinct().toList();
        String common = reasons.size() == 1 ? reasons.get(0) : "";
        return Map.of(
                "outcome", outcome.words(),
                "count", verdicts.size(),
                "reason", common,
                "rows", verdicts.stream().map(verdict -> row(verdict, common)).toList());
    }

    private static Map<String, Object> row(Verdict verdict, String common) {
        Prediction prediction = verdict.prediction();
        ColumnText text =
                ColumnText.about(prediction.value(), prediction.figure().unit());
        return Map.of(
                "figure", prediction.figure().name(),
                "definition", prediction.figure().definition(),
                "place", place(prediction),
                "predicted", text.column(OptionalDouble.of(prediction.value())),
                "simulated", text.column(verdict.simulated()),
                "allowed", text.column(OptionalDouble.of(verdict.allowed())),
                "unit", text.scaledUnit(),
                "deviation", ColumnText.percent(verdict.deviation()),
                "verdict", verdict.outcome().words(),
                "reason", verdict.reason().equals(common) ? "" : verdict.reason());
    }

    private static String place(Prediction prediction) {
        String deck = prediction.deck().map(DeckKind::word).orElse("none");
        return prediction.corner() == Corner.NOMINAL
                ? deck
                : deck + ", " + prediction.corner().word();
    }
}
