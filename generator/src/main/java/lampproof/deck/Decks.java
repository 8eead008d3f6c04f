package lampproof.deck;

import java.util.List;
import java.util.Map;
import lampproof.design.Detail;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Solution;
import lampproof.subcircuit.PartModels;
import lampproof.template.Templates;
import lampproof.unit.PlainNumber;

/** Writes the decks of a solved driver. */
public final class Decks {

    private final Templates templates = Templates.ofDecks(NetlistNumberFormat.FACTORY);
    private final Detail detail;
    private final PartModels models;

    /** Decks that are simulated so finely, in which sub-circuits replace some parts. */
    public Decks(Detail detail, PartModels models) {
        this.detail = detail;
        this.models = models;
    }

    /**
     * The deck of a kind.
     *
     * @param kind what it shows
     * @param solution the solved driver
     * @param predictions the figures in its heading
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
        return "%-28s %12s %-3s +- %s"
                .formatted(
                        prediction.figure().name(),
                        PlainNumber.significant(prediction.value(), 5),
                        prediction.figure().unit(),
                        PlainNumber.significant(prediction.tolerance().around(prediction.value()), 2));
    }
}
