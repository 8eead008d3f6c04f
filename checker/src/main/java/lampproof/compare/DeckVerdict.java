package lampproof.compare;

import java.util.List;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;

/**
 * The verdicts of the simulation of one deck.
 *
 * @param deck the deck
 * @param window the measured interval in words; empty when nothing was measured
 * @param trust the checks of the simulation itself, in order
 * @param verdicts one for each figure that the deck settles
 */
public record DeckVerdict(DeckKind deck, String window, List<TrustCheck> trust, List<Verdict> verdicts) {

    /** Copies the lists. */
    public DeckVerdict {
        trust = List.copyOf(trust);
        verdicts = List.copyOf(verdicts);
    }

    /** No figure of the deck can be judged. */
    public static DeckVerdict noVerdict(DeckKind deck, List<Prediction> predictions, TrustCheck failed) {
        return noVerdict(deck, "", predictions, List.of(failed));
    }

    /** No figure of the deck can be judged because its simulation failed. */
    public static DeckVerdict failed(DeckKind deck, List<Prediction> predictions, String reason) {
        return noVerdict(deck, predictions, TrustCheck.failed("complete", reason));
    }

    /** The deck was omitted on purpose. */
    public static DeckVerdict leftOut(DeckKind deck, List<Prediction> predictions, String reason) {
        return new DeckVerdict(
                deck,
                "",
                List.of(),
                settled(deck, predictions).stream()
                        .map(prediction -> Verdict.predictedOnly(prediction, reason))
                        .toList());
    }

    static DeckVerdict noVerdict(DeckKind deck, String window, List<Prediction> predictions, List<TrustCheck> trust) {
        String reason = trust.stream()
                .filter(check -> !check.passed())
                .map(TrustCheck::text)
                .findFirst()
                .orElseThrow();
        return new DeckVerdict(
                deck,
                window,
                trust,
                settled(deck, predictions).stream()
                        .map(prediction -> Verdict.noVerdict(prediction, reason))
                        .toList());
    }

    /** The predictions that a deck settles. */
    static List<Prediction> settled(DeckKind deck, List<Prediction> predictions) {
        return predictions.stream()
                .filter(prediction -> prediction.isSettledBy(deck))
                .toList();
    }
}
