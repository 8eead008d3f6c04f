package lampproof.deck;

import java.util.Map;
import lampproof.design.Driver;
import lampproof.event.LampEvents;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.BusSwing;

/** Some tens of switching cycles with the line held at its crest. */
record CrestSetup(Solution solution) implements DeckSetup {

    private static final double CYCLES = 40 + LampEvents.CLOCK_AT_END;
    private static final double STEPS_PER_ON_TIME = 100;
    private static final double STEPS_PER_RING = 150;

    @Override
    public double step() {
        return RingStep.limit(solution, solution.crestStage().pace().onTime() / STEPS_PER_ON_TIME, STEPS_PER_RING);
    }

    @Override
    public double stop() {
        return CYCLES / solution.crestStage().pace().leastFrequency();
    }

    @Override
    public Map<String, Object> start() {
        Driver driver = solution.driver();
        AnglePoint crest = solution.operation().crest();
        double series = driver.line().resistance() + driver.filter().seriesResistance();
        double lift = BusSwing.of(driver, crest).turnOn();
        return Map.of(
                "filterCurrent",
                crest.inputCurrent(),
                "filterVoltage",
                driver.line().crest() - series * crest.inputCurrent() + lift,
                "busVoltage",
                crest.busVoltage() + lift,
                "outputVoltage",
                crest.outputVoltage(),
                "inductorCurrent",
                crest.cycle().startCurrent(),
                "balanceCurrent",
                crest.outputCurrent() - crest.stringCurrent());
    }
}
