package lampproof.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.file.CsvText;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.unit.PlainNumber;

/** The verdicts of a run as a table for a spreadsheet. */
public final class VerdictTable {

    private static final int DIGITS = 6;

    private static final List<String> HEADER = List.of(
            "figure",
            "corner",
            "deck",
            "predicted",
            "simulated",
            "unit",
            "deviation",
            "deviation_unit",
            "tolerance",
            "verdict",
            "reason");

    private VerdictTable() {}

    /** The table, one row a figure, the corners last; a value that is not known is an empty cell. */
    public static String text(RunVerdict run) {
        return CsvText.of(
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
                PlainNumber.significant(prediction.value(), DIGITS),
                cell(verdict.simulated(), value -> PlainNumber.significant(value, DIGITS)),
                prediction.figure().unit(),
                cell(verdict.deviation(), value -> PlainNumber.fixed(value, 3)),
                verdict.deviation().isPresent() ? verdict.deviationUnit() : "",
                prediction.deck().isPresent() ? PlainNumber.significant(verdict.allowed(), 3) : "",
                verdict.outcome().words(),
                verdict.reason());
    }

    private static String cell(OptionalDouble value, DoubleFunction<String> text) {
        return value.isPresent() ? text.apply(value.getAsDouble()) : "";
    }
}
