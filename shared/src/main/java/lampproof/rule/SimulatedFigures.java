package lampproof.rule;

import java.util.OptionalDouble;
import lampproof.prediction.DeckKind;

/** The figures that trusted simulations gave. */
@FunctionalInterface
public interface SimulatedFigures {

    /** No deck was simulated. */
    SimulatedFigures NONE = (deck, figure) -> OptionalDouble.empty();

    /** A figure as a deck shows it [unit of the figure]; empty if the deck gave none that can be trusted. */
    OptionalDouble of(DeckKind deck, String figure);

    /** A figure of the whole lamp over half a line period [unit of the figure]. */
    default OptionalDouble ofMains(String figure) {
        return of(DeckKind.MAINS, figure);
    }
}
