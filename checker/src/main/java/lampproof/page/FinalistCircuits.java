package lampproof.page;

import java.util.List;
import lampproof.choice.Candidate;

/**
 * The circuits of the finalists.
 *
 * @param finalists a drawing for each driver
 */
record FinalistCircuits(List<Drawing> finalists) {

    /**
     * A drawing.
     *
     * @param name name of the driver
     * @param circuit the values in its drawing
     */
    record Drawing(String name, CircuitValues circuit) {}

    static FinalistCircuits of(List<Candidate> finalists) {
        return new FinalistCircuits(finalists.stream()
                .map(one -> new Drawing(one.arrangement().topology().word(), CircuitValues.of(one.design())))
                .toList());
    }
}
