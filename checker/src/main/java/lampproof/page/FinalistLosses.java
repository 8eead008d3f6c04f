package lampproof.page;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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

    /** A column each, the largest loss first. */
    static LossTable of(List<Candidate> finalists) {
        return new FinalistLosses(finalists).table();
    }

    private LossTable table() {
        ColumnText text = ColumnText.about(most, "W");
        return new LossTable(
                finalists.stream().map(FinalistLosses::name).toList(),
                finalists.stream().map(this::bar).toList(),
                parts.stream().map(part -> row(part, text)).toList(),
                finalists.stream().map(one -> cell(text, total(one))).toList(),
                text.scaledUnit());
    }

    private LossBar bar(Candidate finalist) {
        return LossBar.of(name(finalist), parts, part -> loss(finalist, part), most);
    }

    private LossTable.Row row(LossPart part, ColumnText text) {
        return new LossTable.Row(
                LossBar.letter(part),
                part.label(),
                finalists.stream().map(one -> cell(text, loss(one, part))).toList(),
                "");
    }

    private double greatest(LossPart part) {
        return finalists.stream().mapToDouble(one -> loss(one, part)).max().orElseThrow();
    }

    private static String name(Candidate finalist) {
        return finalist.arrangement().topology().word();
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
