package lampproof.deck;

import java.util.Map;

/** The simulation settings of a kind of deck: its end, its steps and its initial state. */
interface DeckSetup {

    /** The longest step of the simulator [s]. */
    double step();

    /** The simulated time at which the deck ends [s]. */
    double stop();

    /** The state that it starts from, by the names of the templates [V] [A]. */
    Map<String, Object> start();

    /** Other settings of its blocks, by the names of the templates. */
    default Map<String, Object> settings() {
        return Map.of();
    }

    /** The event and its time, by the names of the templates; empty for a steady state. */
    default Map<String, Object> event() {
        return Map.of();
    }
}
