package lampproof.prediction;

import java.util.Optional;

/**
 * What a figure should be in one deck at one corner of the spec.
 *
 * @param figure the figure
 * @param corner corner of the spec
 * @param deck the deck that settles it; empty when none can
 * @param value the predicted value [unit of the figure]
 * @param tolerance how far the simulation may lie from it
 */
public record Prediction(Figure figure, Corner corner, Optional<DeckKind> deck, double value, Tolerance tolerance) {

    /** Whether a deck settles it. */
    public boolean isSettledBy(DeckKind kind) {
        return deck.equals(Optional.of(kind));
    }

    /** The same with another tolerance. */
    public Prediction within(Tolerance other) {
        return new Prediction(figure, corner, deck, value, other);
    }
}
