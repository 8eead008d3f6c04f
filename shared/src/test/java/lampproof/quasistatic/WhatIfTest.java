package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.Map;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.spec.SpecReader;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Predictions under other conditions: none of them changes nothing, and one changes what textbooks say it does. */
class WhatIfTest {

    /** The ring of a discontinuous cycle finds its own start, a little off the one from the angle before. */
    private static final Percentage SAME = Percentage.withPercentage(2);

    @ParameterizedTest
    @CsvSource({
        "STEP_DOWN, BOUNDARY", "STEP_DOWN, FIXED_DUTY", "STEP_DOWN, PEAK_CURRENT", "STEP_DOWN, FIXED_OFF_TIME",
        "STEP_UP, BOUNDARY", "STEP_UP, FIXED_DUTY", "STEP_UP, PEAK_CURRENT", "STEP_UP, FIXED_OFF_TIME"
    })
    void underTheConditionsThatWerePredictedNothingChanges(Topology topology, Law law) {
        Operation predicted = SteadyState.of(driver(topology, law));
        Operation crest = new CrestWhatIf(predicted).under(Map.of());
        assertThat(crest.stageAtCrest().inductor().peak())
                .isCloseTo(predicted.stageAtCrest().inductor().peak(), SAME);
        assertThat(crest.stageAtCrest().pace().leastFrequency())
                .isCloseTo(predicted.stageAtCrest().pace().leastFrequency(), SAME);
        Operation line = new LineWhatIf(predicted).under(Map.of());
        assertThat(line.line().power()).isCloseTo(predicted.line().power(), SAME);
        assertThat(line.string().meanCurrent()).isCloseTo(predicted.string().meanCurrent(), SAME);
    }

    @ParameterizedTest
    @CsvSource({"STEP_UP, PEAK_CURRENT", "STEP_UP, FIXED_OFF_TIME", "STEP_DOWN, FIXED_OFF_TIME"})
    void onTimeAndFrequencyAreKeptAsTold(Topology topology, Law law) {
        Operation predicted = SteadyState.of(driver(topology, law));
        WhatIf crest = new CrestWhatIf(predicted);
        double onTime = 1.1 * crest.predicted(Condition.ON_TIME);
        double frequency = 0.9 * crest.predicted(Condition.FREQUENCY);
        StageStress stage = crest.under(Map.of(Condition.ON_TIME, onTime, Condition.FREQUENCY, frequency))
                .stageAtCrest();
        assertThat(stage.pace().onTime()).isCloseTo(onTime, Percentage.withPercentage(1e-6));
        assertThat(stage.pace().leastFrequency()).isCloseTo(frequency, Percentage.withPercentage(1e-6));
    }

    /** In boundary conduction the peak is on-time times voltage over inductance. */
    @Test
    void thePeakFollowsOnTimeAndInductance() {
        Operation predicted = SteadyState.of(driver(Topology.STEP_UP, Law.BOUNDARY));
        WhatIf crest = new CrestWhatIf(predicted);
        double peak = predicted.stageAtCrest().inductor().peak();
        Operation shorter = crest.under(Map.of(Condition.ON_TIME, 0.5 * crest.predicted(Condition.ON_TIME)));
        Operation larger = crest.under(Map.of(Condition.INDUCTANCE, 2 * crest.predicted(Condition.INDUCTANCE)));
        Percentage nearly = Percentage.withPercentage(3);
        assertThat(shorter.stageAtCrest().inductor().peak()).isCloseTo(0.5 * peak, nearly);
        assertThat(larger.stageAtCrest().inductor().peak()).isCloseTo(0.5 * peak, nearly);
    }

    /** At a constant on-time power goes with the square of the line voltage and with one over the inductance. */
    @Test
    void powerFollowsLineVoltageAndInductance() {
        Operation predicted = SteadyState.of(driver(Topology.STEP_UP, Law.BOUNDARY));
        WhatIf line = new LineWhatIf(predicted);
        double power = predicted.line().power();
        Operation lower = line.under(Map.of(Condition.LINE_VOLTAGE, 0.95 * line.predicted(Condition.LINE_VOLTAGE)));
        Operation larger = line.under(Map.of(Condition.INDUCTANCE, 1.1 * line.predicted(Condition.INDUCTANCE)));
        assertThat(lower.line().power()).isCloseTo(0.95 * 0.95 * power, Percentage.withPercentage(2));
        assertThat(larger.line().power()).isCloseTo(power / 1.1, Percentage.withPercentage(2));
    }

    @Test
    void aStringOfHigherVoltageGetsLessCurrent() {
        Operation predicted = SteadyState.of(driver(Topology.STEP_UP, Law.BOUNDARY));
        WhatIf line = new LineWhatIf(predicted);
        double rated = line.predicted(Condition.STRING_VOLTAGE);
        Operation higher = line.under(Map.of(Condition.STRING_VOLTAGE, 1.03 * rated));
        assertThat(higher.string().meanCurrent()).isLessThan(predicted.string().meanCurrent());
        assertThat(higher.driver().string().voltage(predicted.driver().string().current()))
                .isCloseTo(1.03 * rated, Percentage.withPercentage(1e-6));
    }

    private static Driver driver(Topology topology, Law law) {
        String string = topology == Topology.STEP_UP ? "420,,V,\nstring.current,,16.7" : "33,,V,\nstring.current,,210";
        String spec = "quantity,min,typ,max,unit,note\n"
                + "driver.topology,," + topology.word() + ",,,\n"
                + "driver.control,," + law.word() + ",,,\n"
                + "line.voltage,,230,,V,\nline.frequency,,50,,Hz,\n"
                + "string.voltage,," + string + ",,mA,\n";
        return Sizing.of(SpecReader.read(new StringReader(spec), "spec.csv")).driver();
    }
}
