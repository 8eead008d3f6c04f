package lampproof.lamps;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.compare.Verdict;
import lampproof.file.CsvText;

/** The table of a series: a row for each figure of each lamp. */
final class FigureRows {

    static final List<String> HEADER = List.of(
            "seed",
            "converter",
            "law",
            "line",
            "deck",
            "figure",
            "predicted",
            "simulated",
            "unit",
            "deviation %",
            "verdict",
            "reason");

    private FigureRows() {}

    static String text(List<LampTrial> trials) {
        return CsvText.of(HEADER, trials.stream().flatMap(FigureRows::rows).toList());
    }

    private static Stream<List<String>> rows(LampTrial trial) {
        return trial.decks().stream()
                .flatMap(deck -> deck.verdict().verdicts().stream())
                .map(verdict -> row(trial.lamp(), verdict));
    }

    private static List<String> row(Lamp lamp, Verdict verdict) {
        return List.of(
                Long.toString(lamp.seed()),
                lamp.word("driver.topology"),
                lamp.word("driver.control"),
                number(OptionalDouble.of(lamp.lineVoltage())),
                verdict.prediction().deck().orElseThrow().word(),
                verdict.prediction().figure().name(),
                number(OptionalDouble.of(verdict.prediction().value())),
                number(verdict.simulated()),
                verdict.prediction().figure().unit(),
                number(verdict.deviation()),
                verdict.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                verdict.reason());
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.5g", value.getAsDouble()) : "";
    }
}
