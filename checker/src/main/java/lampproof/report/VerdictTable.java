package lampproof.report;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.file.SheetText;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;

/** The verdicts of a run as a table for a spreadsheet. */
public final class VerdictTable {

    private static final List<String> HEADER = List.of(
            "figure",
            "corner",
            "deck",
            "predicted",
            "simulated",
            "unit",
            "deviation_percent",
            "tolerance",
            "verdict",
            "reason");

    private VerdictTable() {}

    /** The table, one row a figure, the corners last; a value that is not known is an empty cell. */
    public static String text(RunVerdict run) {
        return SheetText.of(
                HEADER,
                Stream.concat(run.verdicts().stream(), run.corners().stream())
                        .map(VerdictTable::cells)
                        .toList());
    }

    private static List<String> cells(Verdict verdict) {
        Prediction prediction = verdict.prediction();
        return List.of(
                prediction.figure().name(),
                prediction.corner().word(),
                prediction.deck().map(DeckKind::word).orElse(""),
                number(OptionalDouble.of(prediction.value()), "%.6g"),
                number(verdict.simulated(), "%.6g"),
                prediction.figure().unit(),
                number(verdict.deviation(), "%.3f"),
                number(OptionalDouble.of(verdict.allowed()), "%.3g"),
                verdict.outcome().words(),
                verdict.reason());
    }

    private static String number(OptionalDouble value, String format) {
        return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "";
    }
}
