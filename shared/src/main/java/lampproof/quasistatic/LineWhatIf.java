package lampproof.quasistatic;

import java.util.Map;
import lampproof.design.Driver;

/** The line half cycle under changed conditions, at the set-point that was predicted or one that is told. */
final class LineWhatIf implements WhatIf {

    private final Operation predicted;
    private final StageStress stage;

    LineWhatIf(Operation predicted) {
        this.predicted = predicted;
        this.stage = predicted.stage();
    }

    @Override
    public double predicted(Condition condition) {
        return switch (condition) {
            case ON_TIME -> stage.pace().onTime();
            case PEAK_CURRENT -> stage.inductor().peak();
            default -> WhatIf.atCrest(predicted).predicted(condition);
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
