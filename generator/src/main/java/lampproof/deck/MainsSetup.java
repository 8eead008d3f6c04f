package lampproof.deck;

import java.util.Map;
import lampproof.design.Driver;
import lampproof.prediction.Solution;
import lampproof.quasistatic.SlowState;

/**
 * Half a line cycle from its zero crossing, from the predicted periodic steady state.
 *
 * <p>After the bridge the other half is the same, before it the same with opposite sign; that the end returns to the
 * start is checked.
 */
record MainsSetup(Solution solution) implements DeckSetup {

    private static final double STEPS_PER_ON_TIME = 12;
    private static final double STEPS_PER_RING = 30;

    @Override
    public double step() {
        return RingStep.limit(solution, solution.crestStage().pace().onTime() / STEPS_PER_ON_TIME, STEPS_PER_RING);
    }

    @Override
    public double stop() {
        return solution.driver().line().halfPeriod();
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
}
