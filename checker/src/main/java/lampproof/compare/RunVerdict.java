package lampproof.compare;

import java.util.List;
import java.util.stream.Stream;
import lampproof.prediction.Prediction;

/**
 * What the simulations of a run say.
 *
 * @param name name of the run
 * @param decks what each deck says
 * @param others the figures that no deck settles
 */
public record RunVerdict(String name, List<DeckVerdict> decks, List<Verdict> others) {

    /** Copies the lists. */
    public RunVerdict {
        decks = List.copyOf(decks);
        others = List.copyOf(others);
    }

    /** The verdicts of the decks, and of the predictions that no deck settles. */
    public static RunVerdict of(String name, List<Prediction> predictions, List<DeckVerdict> decks) {
        List<Verdict> others = predictions.stream()
                .filter(prediction -> prediction.deck() == null)
                .map(prediction -> Verdict.notSimulated(prediction, "no deck settles this figure"))
                .toList();
        return new RunVerdict(name, decks, others);
    }

    /** Every verdict, deck by deck. */
    public List<Verdict> verdicts() {
        return Stream.concat(decks.stream().flatMap(deck -> deck.verdicts().stream()), others.stream())
                .toList();
    }

    /** How many figures have an outcome. */
    public long count(Outcome outcome) {
        return verdicts().stream()
                .filter(verdict -> verdict.outcome() == outcome)
                .count();
    }

    /** The outcome of the whole: no verdict outweighs a difference, which outweighs agreement. */
    public Outcome worst() {
        return Stream.of(Outcome.NO_VERDICT, Outcome.DIFFERS, Outcome.AGREES)
                .filter(outcome -> count(outcome) > 0)
                .findFirst()
                .orElse(Outcome.NOT_SIMULATED);
    }
}
