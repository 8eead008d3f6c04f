package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * The steady state of a driver with the line held at its crest: every switching cycle becomes like the one before.
 *
 * <p>Over the half cycle the ring of a clocked law in discontinuous mode lags behind: the current with which a cycle begins
 * follows from the ring before it, and that repeats several times before it settles.
 */
final class CrestSteadyState {

    private static final int MOST_CYCLES = 64;

    /** Cycles are alike when the inductor current at turn-on keeps this share of the peak. */
    private static final double ALIKE = 1e-4;

    private CrestSteadyState() {}

    /**
     * The steady state at the crest.
     *
     * @param setPoint on-time [s] or peak current [A]
     * @param passing the crest as the half cycle passes through it; stays where no cycle becomes like the one before
     */
    static AnglePoint of(Driver driver, double setPoint, AnglePoint passing) {
        if (passing.cycle() == null || passing.cycle().continuous()) {
            return passing;
        }
        Converter converter = new Converter(driver, 0);
        CellCycle cycle = passing.cycle();
        for (int i = 0; i < MOST_CYCLES; i++) {
            cycle = converter.cycle(passing.busVoltage(), passing.outputVoltage(), setPoint, cycle.nextStart(), cycle);
            if (cycle == null || cycle.continuous()) {
                return passing;
            }
            if (Math.abs(cycle.nextStart() - cycle.startCurrent()) < ALIKE * cycle.peakCurrent()) {
                return at(converter, driver, passing, cycle);
            }
        }
        return passing;
    }

    private static AnglePoint at(Converter converter, Driver driver, AnglePoint passing, CellCycle cycle) {
        double input = converter.inputCharge(cycle) / cycle.period();
        double more = passing.bridgeCurrent() > 0 ? input - passing.inputCurrent() : 0;
        return new AnglePoint(
                passing.angle(),
                passing.lineVoltage(),
                passing.lineCurrent() + more,
                passing.bridgeCurrent() + more,
                passing.busVoltage(),
                converter.busRipple(driver, cycle, passing.bridgeCurrent() > 0),
                input,
                passing.outputVoltage(),
                converter.outputCharge(cycle) / cycle.period(),
                passing.stringCurrent(),
                cycle);
    }
}
