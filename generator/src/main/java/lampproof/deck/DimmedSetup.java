package lampproof.deck;

import static java.util.Map.entry;

import java.util.Map;
import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.Line;
import lampproof.design.Topology;
import lampproof.prediction.Solution;
import lampproof.quasistatic.dimmed.DimmedOperation;
import lampproof.quasistatic.dimmed.DimmedState;

/** Three line half cycles behind a dimmer, from the predicted periodic steady state; the last two are measured. */
record DimmedSetup(Solution solution) implements DeckSetup {

    private static final double HALF_CYCLES = 3;
    private static final double STEPS_PER_DIODE_PULSE = 30;
    private static final double PULSE_EDGE = 1e-6;
    private static final double SENSE_RESISTANCE = 1e3;

    @Override
    public double step() {
        return Math.min(new MainsSetup(solution).step(), diodePulse() / STEPS_PER_DIODE_PULSE);
    }

    /** How long the diode of a step-up converter conducts at the greatest bus voltage [s]: briefly, when that is low. */
    private double diodePulse() {
        Driver driver = solution.driver();
        double bus = solution.dimmed().operation().stress().busPeak();
        double reset = driver.string().knee() - bus;
        return driver.topology() == Topology.STEP_UP && reset > 0
                ? solution.crestStage().pace().onTime() * bus / reset
                : Double.POSITIVE_INFINITY;
    }

    @Override
    public double stop() {
        return HALF_CYCLES * line().halfPeriod();
    }

    @Override
    public Map<String, Object> start() {
        DimmedState start = solution.dimmed().operation().start();
        return Map.of(
                "dimmerVoltage", -start.lampVoltage(),
                "chokeCurrent", start.chokeCurrent(),
                "filterCurrent", start.filterCurrent(),
                "filterVoltage", start.filteredVoltage(),
                "sensedCurrent", start.sensedCurrent(),
                "busVoltage", start.slow().busVoltage(),
                "outputVoltage", start.slow().outputVoltage(),
                "inductorCurrent", 0);
    }

    @Override
    public Map<String, Object> settings() {
        DimmedOperation dimmed = solution.dimmed().operation();
        Dimming dimming = dimmed.driver().dimming();
        return Map.ofEntries(
                entry("edge", dimming.edge().word()),
                entry("closesAt", closesAt(dimming)),
                entry(
                        "closedFor",
                        Math.max(PULSE_EDGE, dimming.conduction() / line().angularFrequency() - 2 * PULSE_EDGE)),
                entry("pulseEdge", PULSE_EDGE),
                entry("gatePulse", Dimming.GATE_PULSE),
                entry("damping", dimming.damping()),
                entry("halfPeriod", line().halfPeriod()),
                entry("senseResistance", SENSE_RESISTANCE),
                entry("senseCapacitance", DimmedOperation.senseTime(solution.operation()) / SENSE_RESISTANCE),
                entry("bias", dimmed.bias()),
                entry("fullFrom", Dimming.FULL_CURRENT_FROM));
    }

    /** A dimmer that is off closes after the end of the run [s]. */
    private double closesAt(Dimming dimming) {
        return dimming.conduction() > 0 ? dimming.firingAngle() / line().angularFrequency() : 2 * stop();
    }

    private Line line() {
        return solution.driver().line();
    }
}
