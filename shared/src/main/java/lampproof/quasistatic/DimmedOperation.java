package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * A lamp behind a dimmer, in its periodic steady state.
 *
 * @param driver the driver with its dimmer
 * @param bias current of the controller and its gate drive [A]
 * @param start states at the zero crossing of the line, before a positive half cycle
 * @param stress what the half cycles show
 */
public record DimmedOperation(Driver driver, double bias, DimmedState start, DimmedStress stress) {

    private static final int MOST_PASSES = 120;

    /** So many passes begin where the output tends; later ones go their own way, so that two may take turns. */
    private static final int HASTENED_PASSES = 40;

    private static final double TOLERANCE = 1e-4;
    private static final double SENSE_PERIODS = 3;

    /**
     * A driver behind its own dimmer, from its steady state without one.
     *
     * @throws IllegalStateException when the passes do not settle
     */
    public static DimmedOperation of(Operation full) {
        return from(full, full.driver(), DimmedState.of(full.start()));
    }

    /**
     * Behind a dimmer that lets through another angle of each half cycle [rad], from the state of before.
     *
     * @throws IllegalStateException when the passes do not settle
     */
    public DimmedOperation at(Operation full, double conduction) {
        return from(full, driver.behind(driver.fittings().dimming().at(conduction)), start);
    }

    /**
     * Runs half cycles until one repeats the one before it. In some firings two of them take turns, as long as the line
     * lasts: the converter then finds another bus each time. Both together are the steady state.
     *
     * @param full the steady state without a dimmer
     * @param dimmed the same driver, also with another dimmer or bleeder
     * @param first states to begin with
     * @throws IllegalStateException when the passes do not settle
     */
    public static DimmedOperation from(Operation full, Driver dimmed, DimmedState first) {
        double bias = bias(full);
        DimmedHalfCycle halfCycle = new DimmedHalfCycle(dimmed, bias, senseTime(full));
        DimmedState start = first;
        DimmedState earlier = null;
        DimmedStress last = null;
        double unrest = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            DimmedState end = halfCycle.run(start, full.setPoint());
            DimmedStress stress = halfCycle.stress();
            if (unrest(dimmed, start, end) < TOLERANCE) {
                return new DimmedOperation(dimmed, bias, start, stress);
            }
            unrest = earlier == null ? unrest : unrest(dimmed, earlier, end);
            if (unrest < TOLERANCE) {
                return new DimmedOperation(dimmed, bias, earlier, last.with(stress));
            }
            earlier = pass < HASTENED_PASSES ? null : start;
            last = stress;
            start = pass < HASTENED_PASSES ? hastened(dimmed, start, end) : end;
        }
        throw new IllegalStateException("the lamp does not settle behind the dimmer, left: " + unrest);
    }

    /** The end of a half cycle, with the output voltage where it tends to. */
    private static DimmedState hastened(Driver driver, DimmedState start, DimmedState end) {
        double before = start.slow().outputVoltage();
        double settling = before + (end.slow().outputVoltage() - before) / forgetting(driver);
        boolean lit = Math.min(before, settling) > driver.string().knee();
        return lit ? end.withOutputVoltage(settling) : end;
    }

    /** Time constant with which the bleeder senses what the lamp draws [s]. */
    public static double senseTime(Operation full) {
        return SENSE_PERIODS / full.stageAtCrest().leastFrequency();
    }

    private static double bias(Operation full) {
        double charge = full.driver().fittings().edges().gateCharge();
        double gate = full.points().stream()
                .mapToDouble(point -> point.gateCurrent(charge))
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
