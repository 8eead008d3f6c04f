package lampproof.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;

/**
 * The verdicts of all simulations of a run.
 *
 * @param name name of the run
 * @param decks the verdict of each deck
 * @param others the figures that no deck measures
 * @param corners the figures at the least and the greatest line voltage, for which there is no deck
 */
public record RunVerdict(String name, List<DeckVerdict> decks, List<Verdict> others, List<Verdict> corners) {

    /** Copies the lists. */
    public RunVerdict {
        decks = List.copyOf(decks);
        others = List.copyOf(others);
        corners = List.copyOf(corners);
    }

    /** The verdicts of the decks, and of the predictions that no deck settles. */
    public static RunVerdict of(String name, List<Prediction> predictions, List<DeckVerdict> decks) {
        return new RunVerdict(
                name,
                decks,
                silent(predictions, RunVerdict::isNominal, "no deck settles this figure"),
                silent(predictions, prediction -> !isNominal(prediction), "decks have the typical line voltage"));
    }

    private static List<Verdict> silent(List<Prediction> predictions, Predicate<Prediction> which, String reason) {
        return predictions.stream()
                .filter(prediction -> prediction.deck().isEmpty())
                .filter(which)
                .map(prediction -> Verdict.predictedOnly(prediction, reason))
                .toList();
    }

    private static boolean isNominal(Prediction prediction) {
        return prediction.corner() == Corner.NOMINAL;
    }

    /** Every verdict at the typical line voltage, deck by deck. */
    public List<Verdict> verdicts() {
        return Stream.concat(decks.stream().flatMap(deck -> deck.verdicts().stream()), others.stream())
                .toList();
    }

    /** The number of figures with an outcome at the typical line voltage. */
    public long count(Outcome outcome) {
        return verdicts().stream()
                .filter(verdict -> verdict.outcome() == outcome)
                .count();
    }

    /** What a deck shows of a figure [unit of the figure]; empty unless its simulation can be trusted. */
    public OptionalDouble simulated(DeckKind deck, String figure) {
        return verdicts().stream()
                .filter(verdict -> verdict.prediction().isSettledBy(deck))
                .filter(verdict -> verdict.prediction().figure().name().equals(figure))
                .map(Verdict::simulated)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** The outcome of the run: no verdict is worse than a difference, a difference is worse than agreement. */
    public Outcome worst() {
        return Stream.of(Outcome.NO_VERDICT, Outcome.DIFFERS, Outcome.AGREES)
                .filter(outcome -> count(outcome) > 0)
                .findFirst()
                .orElse(Outcome.PREDICTED_ONLY);
    }
}
