package lampproof.quasistatic.dimmed;

import lampproof.design.Driver;
import lampproof.quasistatic.Operation;

/**
 * A lamp behind a dimmer, in its periodic steady state.
 *
 * @param driver the driver with its dimmer
 * @param bias current of the controller and its gate drive [A]
 * @param start states at the zero crossing of the line, before a positive half cycle
 * @param stress what the half cycles show
 * @param swing greatest less least mean string current of the half cycles that take turns [A]; zero when all are alike
 */
public record DimmedOperation(Driver driver, double bias, DimmedState start, DimmedStress stress, double swing) {

    private static final double SENSE_PERIODS = 3;

    /** A driver behind its own dimmer, from its steady state without one. */
    public static DimmedOperation of(Operation full) {
        return from(full, full.driver(), DimmedState.of(full.start()));
    }

    /** Behind a dimmer that lets through another angle of each half cycle [rad], from the state of before. */
    public DimmedOperation at(Operation full, double conduction) {
        return from(full, driver.behind(driver.dimming().at(conduction)), start);
    }

    /**
     * A driver behind a dimmer, from given states.
     *
     * @param full the steady state without a dimmer
     * @param dimmed the same driver, also with another dimmer or bleeder
     * @param first states to begin with
     */
    public static DimmedOperation from(Operation full, Driver dimmed, DimmedState first) {
        double bias = bias(full);
        DimmedHalfCycle halfCycle = new DimmedHalfCycle(dimmed, bias, senseTime(full));
        DimmedSettling.Settled settled = new DimmedSettling(dimmed, halfCycle, full.setPoint()).from(first);
        return new DimmedOperation(dimmed, bias, settled.start(), settled.stress(), settled.swing());
    }

    /** Time constant with which the bleeder senses what the lamp draws [s]. */
    public static double senseTime(Operation full) {
        return SENSE_PERIODS / full.stageAtCrest().pace().leastFrequency();
    }

    private static double bias(Operation full) {
        double charge = full.driver().edges().gateCharge();
        double gate = full.points().stream()
                .mapToDouble(point -> point.gateCurrent(charge))
                .average()
                .orElse(0);
        return full.driver().supplyCurrent() + gate;
    }
}
