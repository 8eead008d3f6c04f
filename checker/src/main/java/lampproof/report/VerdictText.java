package lampproof.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.prediction.Figure;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** The verdicts of a run for a reader, deck by deck: first whether it can be trusted, then its figures. */
public final class VerdictText {

    private static final List<String> HEAD = List.of("figure", "predicted", "simulated", "deviation", "allowed", "");

    private final Style style;

    /** Verdicts in a style. */
    public VerdictText(Style style) {
        this.style = style;
    }

    /** The verdicts as lines. */
    public String text(RunVerdict run) {
        StringBuilder text = new StringBuilder();
        run.decks().forEach(deck -> text.append("\n").append(deck(deck)));
        if (!run.others().isEmpty()) {
            text.append("\n")
                    .append(style.heading("predicted only: no deck shows these figures"))
                    .append("\n");
            text.append(predictedOnly(run.others()));
        }
        return text.toString();
    }

    private String deck(DeckVerdict deck) {
        StringBuilder text =
                new StringBuilder(style.heading("deck " + deck.deck().word()) + "\n");
        text.append(trust(deck.trust()));
        return text.append(
                        deck.verdicts().stream()
                                        .anyMatch(verdict -> verdict.simulated().isPresent())
                                ? grid(deck.verdicts())
                                : silent(deck))
                .toString();
    }

    /** A deck without any value has one line. */
    private String silent(DeckVerdict deck) {
        if (deck.verdicts().isEmpty()) {
            return "";
        }
        Verdict first = deck.verdicts().get(0);
        return "  "
                + style.bad(first.outcome().words() + " on any of its "
                        + deck.verdicts().size() + " figures") + ": " + Printable.of(first.reason()) + "\n";
    }

    private String trust(List<TrustCheck> checks) {
        Grid grid = new Grid("lll");
        for (TrustCheck check : checks) {
            UnaryOperator<String> paint = check.passed() ? UnaryOperator.identity() : style::bad;
            grid.add(List.of(check.passed() ? "ok" : "FAILED", check.name(), Printable.of(check.text())), paint);
        }
        return grid.text();
    }

    private String grid(List<Verdict> verdicts) {
        Grid grid = new Grid("lrrrrl").add(HEAD, style::heading);
        for (Verdict verdict : verdicts) {
            boolean good = verdict.outcome() == Outcome.AGREES || verdict.outcome() == Outcome.PREDICTED_ONLY;
            grid.add(cells(verdict), good ? UnaryOperator.identity() : style::bad);
        }
        return grid.text();
    }

    private static String predictedOnly(List<Verdict> verdicts) {
        Grid grid = new Grid("lr");
        for (Verdict verdict : verdicts) {
            Figure figure = verdict.prediction().figure();
            grid.add(List.of(
                    Printable.of(figure.name()),
                    ValueStyle.FIGURES.text(verdict.prediction().value(), figure.unit())));
        }
        return grid.text();
    }

    private static List<String> cells(Verdict verdict) {
        Figure figure = verdict.prediction().figure();
        return List.of(
                Printable.of(figure.name()),
                ValueStyle.FIGURES.text(verdict.prediction().value(), figure.unit()),
                value(verdict.simulated(), figure.unit()),
                deviation(verdict),
                "+- " + ValueStyle.FIGURES.text(verdict.allowed(), figure.unit()),
                words(verdict));
    }

    private static String words(Verdict verdict) {
        return switch (verdict.outcome()) {
            case AGREES -> "agrees";
            case DIFFERS -> verdict.reason().isEmpty() ? "DIFFERS" : "DIFFERS: " + Printable.of(verdict.reason());
            case NO_VERDICT, PREDICTED_ONLY -> verdict.outcome().words() + ": " + Printable.of(verdict.reason());
        };
    }

    private static String value(OptionalDouble value, String unit) {
        return value.isPresent() ? ValueStyle.FIGURES.text(value.getAsDouble(), unit) : "";
    }

    private static String deviation(Verdict verdict) {
        OptionalDouble deviation = verdict.deviation();
        return deviation.isPresent()
                ? PlainNumber.signed(deviation.getAsDouble(), 2) + " " + verdict.deviationUnit()
                : "";
    }
}
