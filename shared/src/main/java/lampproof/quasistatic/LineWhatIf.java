package lampproof.quasistatic;

import java.util.Map;
import lampproof.design.Driver;

/** The line half cycle under changed conditions, at the predicted set-point or a given one; the string current follows. */
public final class LineWhatIf implements WhatIf {

    private final Operation predicted;
    private final StageStress stage;

    /** The conditions of a steady state over the half cycle. */
    public LineWhatIf(Operation predicted) {
        this.predicted = predicted;
        this.stage = predicted.stage();
    }

    @Override
    public double predicted(Condition condition) {
        return switch (condition) {
            case ON_TIME -> stage.pace().onTime();
            case PEAK_CURRENT -> stage.inductor().peak();
            default -> new CrestWhatIf(predicted).predicted(condition);
        };
    }

    @Override
    public Operation under(Map<Condition, Double> changed) {
        Driver driver =
                ChangedDriver.of(predicted.driver(), changed, predicted.driver().control());
        double setPoint =
                predicted.setPoint() * ratio(changed, Condition.ON_TIME) * ratio(changed, Condition.PEAK_CURRENT);
        return SteadyState.at(driver, setPoint, predicted.start());
    }

    private double ratio(Map<Condition, Double> changed, Condition condition) {
        double predictedValue = predicted(condition);
        return changed.getOrDefault(condition, predictedValue) / predictedValue;
    }
}
