package lampproof.page;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lampproof.choice.Candidate;
import lampproof.prediction.loss.LossPart;

/** The losses of finalists, part by part, as bars on one scale and as a table. */
final class FinalistLosses {

    private static final double DRAWN = 1e-4;

    private final List<Candidate> finalists;
    private final List<LossPart> parts;
    private final double most;

    private FinalistLosses(List<Candidate> finalists) {
        this.finalists = finalists;
        this.most = finalists.stream().mapToDouble(FinalistLosses::total).max().orElseThrow();
        this.parts = Arrays.stream(LossPart.values())
                .filter(part -> finalists.stream().anyMatch(finalist -> loss(finalist, part) > DRAWN * most))
                .sorted(Comparator.comparingDouble(this::greatest).reversed())
                .toList();
    }

    /** The bars and rows, the largest loss first. */
    static Map<String, Object> of(List<Candidate> finalists) {
        return new FinalistLosses(finalists).model();
    }

    private Map<String, Object> model() {
        ColumnText text = ColumnText.about(most, "W");
        return Map.of(
                "bars", finalists.stream().map(this::bar).toList(),
                "unit", text.scaledUnit(),
                "rows", parts.stream().map(part -> row(part, text)).toList(),
                "totals", finalists.stream().map(one -> cell(text, total(one))).toList());
    }

    private Map<String, Object> bar(Candidate finalist) {
        List<Double> drawn = parts.stream().map(part -> loss(finalist, part)).toList();
        return Map.of("name", finalist.arrangement().topology().word(), "segments", LossBar.segments(drawn, most));
    }

    private Map<String, Object> row(LossPart part, ColumnText text) {
        return Map.of(
                "letter", LossBar.letter(parts.indexOf(part)),
                "name", part.word(),
                "cells",
                        finalists.stream()
                                .map(one -> cell(text, loss(one, part)))
                                .toList());
    }

    private double greatest(LossPart part) {
        return finalists.stream().mapToDouble(one -> loss(one, part)).max().orElseThrow();
    }

    private static String cell(ColumnText text, double loss) {
        return text.column(OptionalDouble.of(loss));
    }

    private static double loss(Candidate finalist, LossPart part) {
        return finalist.solution().losses().of(part);
    }

    private static double total(Candidate finalist) {
        return finalist.solution().losses().total();
    }
}
