package lampproof.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** The verdicts of a run in a few lines: how many figures agree, and each that differs or has no verdict. */
public final class VerdictSummary {

    /** More differences than this are not read one by one. */
    private static final int MOST = 10;

    private final Style style;

    /** Summaries in a style. */
    public VerdictSummary(Style style) {
        this.style = style;
    }

    /** The summary as lines. */
    public String text(RunVerdict run) {
        StringBuilder text = new StringBuilder(paint(run, sentence(run)) + "\n");
        run.decks().stream().filter(VerdictSummary::isSilent).forEach(deck -> text.append(silent(deck)));
        List<Verdict> wrong = run.decks().stream()
                .filter(deck -> !isSilent(deck))
                .flatMap(VerdictSummary::wrong)
                .sorted(Comparator.comparingDouble(Verdict::use).reversed())
                .toList();
        wrong.stream().limit(MOST).forEach(verdict -> text.append(style.bad(line(verdict))));
        if (wrong.size() > MOST) {
            text.append("  ").append(wrong.size() - MOST).append(" more: --all lists them\n");
        }
        return text.toString();
    }

    /** How many figures agree, in one sentence. */
    public static String sentence(RunVerdict run) {
        long agree = run.count(Outcome.AGREES);
        long compared = agree + run.count(Outcome.DIFFERS);
        long silent = run.count(Outcome.NO_VERDICT);
        if (compared + silent == 0) {
            return "simulation: no figure was simulated";
        }
        return "simulation: " + agree + " of " + (compared + silent) + " figures agree"
                + (silent == 0 ? "" : ", " + silent + (silent == 1 ? " has" : " have") + " no verdict")
                + nearest(run).map(VerdictSummary::nearest).orElse("");
    }

    private static String nearest(Verdict verdict) {
        return ", nearest to its limit " + verdict.prediction().figure().name() + " at "
                + PlainNumber.percent(verdict.use(), 0);
    }

    private static Optional<Verdict> nearest(RunVerdict run) {
        return run.verdicts().stream()
                .filter(verdict -> verdict.outcome() == Outcome.AGREES)
                .max(Comparator.comparingDouble(Verdict::use));
    }

    private String paint(RunVerdict run, String text) {
        return switch (run.worst()) {
            case AGREES -> style.good(text);
            case DIFFERS, NO_VERDICT -> style.bad(text);
            case PREDICTED_ONLY -> text;
        };
    }

    /** A deck without a verdict on any of its figures has one reason. */
    private static boolean isSilent(DeckVerdict deck) {
        return deck.trust().stream().anyMatch(check -> !check.passed());
    }

    private String silent(DeckVerdict deck) {
        String reason = deck.trust().stream()
                .filter(check -> !check.passed())
                .map(TrustCheck::text)
                .findFirst()
                .orElseThrow();
        String text = "NO VERDICT  deck " + deck.deck().word() + ", all "
                + deck.verdicts().size() + " figures: " + Printable.of(reason);
        return style.bad(Paragraph.of(text, "  ", "              "));
    }

    private static Stream<Verdict> wrong(DeckVerdict deck) {
        return deck.verdicts().stream()
                .filter(verdict -> verdict.outcome() == Outcome.DIFFERS || verdict.outcome() == Outcome.NO_VERDICT);
    }

    private static String line(Verdict verdict) {
        Figure figure = verdict.prediction().figure();
        String deck = verdict.prediction().deck().map(DeckKind::word).orElse("");
        String text = (verdict.outcome() == Outcome.DIFFERS ? "DIFFERS" : "NO VERDICT") + "  "
                + Printable.of(figure.name()) + " (" + deck + ")" + values(verdict, figure.unit());
        String reason = verdict.reason().isEmpty() ? "" : ": " + Printable.of(verdict.reason());
        return Paragraph.of(text + reason, "  ", "           ");
    }

    private static String values(Verdict verdict, String unit) {
        return verdict.simulated().isEmpty()
                ? ""
                : " predicted " + ValueStyle.FIGURES.text(verdict.prediction().value(), unit) + ", simulated "
                        + ValueStyle.FIGURES.text(verdict.simulated().getAsDouble(), unit) + ", allowed +- "
                        + ValueStyle.FIGURES.text(verdict.allowed(), unit);
    }
}
