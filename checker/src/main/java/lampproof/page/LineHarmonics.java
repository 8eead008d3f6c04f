package lampproof.page;

import java.util.List;
import lampproof.design.Line;
import lampproof.physics.CurrentFlow;
import lampproof.physics.HarmonicAssessment;
import lampproof.physics.LightingHarmonics;
import lampproof.physics.LineCurrentFigures;
import lampproof.prediction.Solution;
import lampproof.quasistatic.LineStress;

/** The harmonic rules that hold for a predicted line current. */
final class LineHarmonics {

    private static final double LEAST_VOLTAGE = 220;
    private static final double GREATEST_VOLTAGE = 240;

    private LineHarmonics() {}

    static HarmonicAssessment assess(Solution solution) {
        Line line = solution.driver().line();
        if (line.voltage() < LEAST_VOLTAGE || line.voltage() > GREATEST_VOLTAGE) {
            return new HarmonicAssessment("IEC 61000-3-2 limits hold for lines of 220 V to 240 V only", List.of());
        }
        LineStress stress = solution.line();
        double powerFactor = Math.min(1, stress.powerFactor(line.voltage()));
        return LightingHarmonics.assess(
                new LineCurrentFigures(stress.power(), powerFactor, stress.spectrum(), flow(solution)));
    }

    private static CurrentFlow flow(Solution solution) {
        return CurrentFlow.ofSamples(solution.operation().points().stream()
                .mapToDouble(point -> point.lineCurrent())
                .toArray());
    }
}
