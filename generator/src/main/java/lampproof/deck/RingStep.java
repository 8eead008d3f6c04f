package lampproof.deck;

import lampproof.design.Driver;
import lampproof.prediction.Solution;

/** The step that follows the ring of inductor and node capacitance, where a driver spends its off-times ringing. */
final class RingStep {

    private static final double MOST_CYCLES = 0.5;

    private RingStep() {}

    /**
     * A step that is short enough for the ring too [s]: Gear's rule slows and damps a ring by the square of its step, and a
     * clocked switch then closes at another voltage.
     *
     * @param step the step without a ring [s]
     * @param points points in a period of the ring
     */
    static double limit(Solution solution, double step, double points) {
        boolean rings = solution.stage().pace().discontinuousShare() > MOST_CYCLES;
        return rings ? Math.min(step, period(solution.driver()) / points) : step;
    }

    private static double period(Driver driver) {
        double inductance = driver.inductor().inductance();
        return 2 * Math.PI * Math.sqrt(inductance * driver.powerSwitch().capacitance());
    }
}
