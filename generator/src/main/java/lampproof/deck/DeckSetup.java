package lampproof.deck;

import java.util.Map;

/** What sets one kind of deck apart: how far it runs, in which steps, and from which state. */
interface DeckSetup {

    /** The longest step of the simulator [s]. */
    double step();

    /** The simulated time at which the deck ends [s]. */
    double stop();

    /** The state that it starts from, by the names of the templates [V] [A]. */
    Map<String, Object> start();

    /** What else its blocks are set to, by the names of the templates. */
    default Map<String, Object> settings() {
        return Map.of();
    }

    /** What happens and when, by the names of the templates; empty for a steady state. */
    default Map<String, Object> event() {
        return Map.of();
    }
}
