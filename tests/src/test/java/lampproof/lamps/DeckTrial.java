package lampproof.lamps;

import lampproof.compare.DeckVerdict;
import lampproof.simulator.SimulationOutcome;

/**
 * What became of one deck of a lamp.
 *
 * @param outcome how its simulation ended
 * @param verdict what it says of the figures
 */
record DeckTrial(SimulationOutcome outcome, DeckVerdict verdict) {

    /** Why there is no verdict, empty when there is one. */
    String refusal() {
        return verdict.trust().stream()
                .filter(check -> !check.passed())
                .map(check -> check.name() + ": " + check.text())
                .findFirst()
                .orElse("");
    }
}
