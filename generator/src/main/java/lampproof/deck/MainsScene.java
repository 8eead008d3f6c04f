package lampproof.deck;

import java.util.Map;
import lampproof.design.Driver;
import lampproof.prediction.Solution;
import lampproof.quasistatic.SlowState;

/** A whole line cycle from its zero crossing, from the predicted periodic steady state. */
record MainsScene(Solution solution) implements Scene {

    private static final double STEPS_PER_ON_TIME = 25;
    private static final double STEPS_PER_RING = 30;
    private static final double MOST_CYCLES = 0.5;

    @Override
    public double step() {
        double step = solution.crestStage().meanOnTime() / STEPS_PER_ON_TIME;
        boolean rings = solution.stage().discontinuousShare() > MOST_CYCLES;
        return rings ? Math.min(step, ringPeriod() / STEPS_PER_RING) : step;
    }

    @Override
    public double stop() {
        return 2 * solution.driver().line().halfPeriod();
    }

    @Override
    public Map<String, Object> start() {
        Driver driver = solution.driver();
        SlowState start = solution.operation().start();
        double displacement = driver.filter().capacitance()
                * driver.line().crest()
                * driver.line().angularFrequency();
        return Map.of(
                "filterCurrent",
                displacement,
                "filterVoltage",
                0,
                "busVoltage",
                start.busVoltage(),
                "outputVoltage",
                start.outputVoltage(),
                "inductorCurrent",
                0);
    }

    /** Period of the ring of inductor and node capacitance [s]: Gear's rule damps it when it is not followed. */
    private double ringPeriod() {
        Driver driver = solution.driver();
        double inductance = driver.inductor().inductance();
        return 2 * Math.PI * Math.sqrt(inductance * driver.powerSwitch().capacitance());
    }
}
