package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * A lamp behind a dimmer, in its periodic steady state.
 *
 * @param driver the driver with its dimmer
 * @param setPoint on-time [s] or peak current [A], the same as without a dimmer
 * @param bias current of the controller and its gate drive [A]
 * @param start states at the zero crossing of the line, before a positive half cycle
 * @param stress what the half cycle shows
 */
public record DimmedOperation(Driver driver, double setPoint, double bias, DimmedState start, DimmedStress stress) {

    private static final int MOST_PASSES = 80;
    private static final double TOLERANCE = 1e-4;
    private static final double SENSE_PERIODS = 3;

    /** A driver behind its own dimmer, from its steady state without one. */
    public static DimmedOperation of(Operation full) {
        return from(full, full.driver(), DimmedState.of(full.start()));
    }

    /** Behind a dimmer that lets through another angle of each half cycle [rad], from the state of before. */
    public DimmedOperation at(Operation full, double conduction) {
        return from(full, driver.behind(driver.fittings().dimming().at(conduction)), start);
    }

    /**
     * Another driver than the one that was solved without a dimmer, such as one without bleeder.
     *
     * @param full the steady state without a dimmer
     * @param dimmed the same driver with another dimmer or bleeder
     * @param first states to begin with
     */
    public static DimmedOperation from(Operation full, Driver dimmed, DimmedState first) {
        double bias = bias(full);
        DimmedHalfCycle halfCycle = new DimmedHalfCycle(dimmed, bias, senseTime(full));
        double forgetting = forgetting(dimmed);
        DimmedState start = first;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            DimmedState end = halfCycle.run(start, full.setPoint());
            if (unrest(dimmed, start, end) < TOLERANCE) {
                break;
            }
            double before = start.slow().outputVoltage();
            double settling = before + (end.slow().outputVoltage() - before) / forgetting;
            boolean lit = Math.min(before, settling) > dimmed.string().knee();
            start = lit ? end.withOutputVoltage(settling) : end;
        }
        return new DimmedOperation(dimmed, full.setPoint(), bias, start, halfCycle.stress());
    }

    /** Time constant with which the bleeder senses what the lamp draws [s]. */
    public static double senseTime(Operation full) {
        return SENSE_PERIODS / full.stageAtCrest().leastFrequency();
    }

    private static double bias(Operation full) {
        double charge = full.driver().fittings().edges().gateCharge();
        double gate = full.points().stream()
                .mapToDouble(point ->
                        point.cycle() == null ? 0 : charge / point.cycle().period())
                .average()
                .orElse(0);
        return full.driver().fittings().bias() + gate;
    }

    private static double forgetting(Driver driver) {
        double timeConstant = driver.string().resistance() * driver.output().capacitance();
        return -Math.expm1(-driver.line().halfPeriod() / timeConstant);
    }

    /** Change of bus energy over that of the string, or of the output voltage, whichever is larger [-]. */
    private static double unrest(Driver driver, DimmedState start, DimmedState end) {
        double rated = driver.string().voltage(driver.string().current());
        double energy = rated * driver.string().current() * driver.line().halfPeriod();
        double before = start.slow().busVoltage();
        double after = end.slow().busVoltage();
        double bus = 0.5 * driver.busCapacitance() * Math.abs(after * after - before * before) / energy;
        double output = Math.abs(end.slow().outputVoltage() - start.slow().outputVoltage()) / rated;
        double lamp = Math.abs(end.lampVoltage() - start.lampVoltage())
                / driver.line().crest();
        return Math.max(bus, Math.max(output, 0.1 * lamp));
    }
}
