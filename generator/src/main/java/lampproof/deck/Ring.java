package lampproof.deck;

import lampproof.design.Driver;
import lampproof.quasistatic.StageStress;

/** The ring of inductor and node capacitance: Gear's rule damps and delays it when it is not followed. */
final class Ring {

    private static final double STEPS = 100;
    private static final double MOST_CYCLES = 0.5;

    private Ring() {}

    /** The step [s], or a shorter one where most cycles ring. */
    static double followed(Driver driver, StageStress stage, double step) {
        return stage.discontinuousShare() > MOST_CYCLES ? Math.min(step, period(driver) / STEPS) : step;
    }

    private static double period(Driver driver) {
        double inductance = driver.inductor().inductance();
        return 2 * Math.PI * Math.sqrt(inductance * driver.powerSwitch().capacitance());
    }
}
