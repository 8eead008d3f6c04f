package lampproof.rule;

import java.util.OptionalDouble;
import lampproof.prediction.DeckKind;

/**
 * One use of a rated part, and the figure by which a deck shows it.
 *
 * @param predicted the predicted use
 * @param deck the deck that shows it
 * @param figure the figure that holds it; empty when no deck shows the use
 * @param scale the use over the figure [V] or [A] per unit of the figure
 * @param typical whether it is the use at the typical line voltage, which decks have
 */
record Use(RatedUse predicted, DeckKind deck, String figure, double scale, boolean typical) {

    /** What a simulation shows of it [V] or [A]. */
    OptionalDouble shown(SimulatedFigures simulated) {
        OptionalDouble value = figure.isEmpty() ? OptionalDouble.empty() : simulated.of(deck, figure);
        return value.isPresent() ? OptionalDouble.of(scale * value.getAsDouble()) : value;
    }

    /** The use as simulated, where a deck shows it. */
    RatedUse in(SimulatedFigures simulated) {
        OptionalDouble shown = shown(simulated);
        return shown.isPresent() ? predicted.simulatedAs(shown.getAsDouble()) : predicted;
    }
}
