package lampproof.deck;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampproof.design.Detail;
import lampproof.part.PartModels;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Solution;
import lampproof.template.Templates;

/** Makes the decks of a solved driver. */
public final class Decks {

    private final Templates templates = Templates.ofDecks(NetlistNumberFormat.FACTORY);
    private final Detail detail;
    private final PartModels models;

    /** Decks that are simulated so finely, in which sub-circuits take the place of some parts. */
    public Decks(Detail detail, PartModels models) {
        this.detail = detail;
        this.models = models;
    }

    /**
     * The deck of a kind.
     *
     * @param kind what it shows
     * @param solution the solved driver
     * @param predictions the figures that its heading tells
     */
    public Deck of(DeckKind kind, Solution solution, List<Prediction> predictions) {
        String topology = solution.driver().topology().word();
        String law = solution.driver().control().law().word();
        String title = "lampproof " + kind.word() + " deck: " + topology + " lamp driver, " + law + " control";
        List<String> figures = predictions.stream()
                .filter(prediction -> prediction.isSettledBy(kind))
                .map(Decks::headingLine)
                .toList();
        Map<String, Object> values = new DeckValues(solution, kind, detail, models).with(title, figures);
        return new Deck(kind, templates.fill(kind.word() + ".ftl", values));
    }

    private static String headingLine(Prediction prediction) {
        return String.format(
                Locale.ROOT,
                "%-28s %12.5g %-3s +- %.2g",
                prediction.figure().name(),
                prediction.value(),
                prediction.figure().unit(),
                prediction.tolerance().around(prediction.value()));
    }
}
