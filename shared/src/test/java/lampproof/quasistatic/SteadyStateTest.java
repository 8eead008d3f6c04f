package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.spec.SpecReader;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steady state repeats itself, gives the string its current, and loses no energy. */
class SteadyStateTest {

    @ParameterizedTest
    @CsvSource({
        "STEP_DOWN, BOUNDARY", "STEP_DOWN, FIXED_DUTY", "STEP_DOWN, PEAK_CURRENT", "STEP_DOWN, FIXED_OFF_TIME",
        "STEP_UP, BOUNDARY", "STEP_UP, FIXED_DUTY", "STEP_UP, PEAK_CURRENT", "STEP_UP, FIXED_OFF_TIME"
    })
    void theStringCarriesItsCurrentAndTheHalfCycleRepeats(Topology topology, Law law) {
        Operation operation = SteadyState.of(driver(topology, law));
        assertThat(operation.string().meanCurrent())
                .isCloseTo(operation.driver().string().current(), Percentage.withPercentage(0.001));
        SlowState end = new HalfCycle(operation.driver()).run(operation.start(), operation.setPoint(), null);
        assertThat(end.outputVoltage()).isCloseTo(operation.start().outputVoltage(), Percentage.withPercentage(0.001));
        assertThat(end.busVoltage()).isCloseTo(operation.start().busVoltage(), within(0.2));
    }

    @ParameterizedTest
    @CsvSource({
        "STEP_DOWN, BOUNDARY", "STEP_DOWN, FIXED_DUTY", "STEP_DOWN, PEAK_CURRENT", "STEP_DOWN, FIXED_OFF_TIME",
        "STEP_UP, BOUNDARY", "STEP_UP, FIXED_DUTY", "STEP_UP, PEAK_CURRENT", "STEP_UP, FIXED_OFF_TIME"
    })
    void linePowerIsStringPowerPlusEveryLoss(Topology topology, Law law) {
        Operation operation = SteadyState.of(driver(topology, law));
        LineStress line = operation.line();
        StageStress stage = operation.stage();
        double losses = line.bridgeLoss()
                + line.filterLoss()
                + stage.inductor().loss()
                + stage.powerSwitch().conductionLoss()
                + stage.powerSwitch().senseLoss()
                + stage.powerSwitch().turnOnLoss()
                + stage.diode().conductionLoss();
        double remainder = line.power() - operation.string().power() - losses;
        assertThat(remainder).isCloseTo(0, within(0.006 * line.power()));
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
