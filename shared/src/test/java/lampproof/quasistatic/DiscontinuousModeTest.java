package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import lampproof.design.Driver;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiscontinuousModeTest {

    @Test
    void tooLargeAnInductanceIsRefusedWithTheLargestThatWorks() {
        assertThatThrownBy(() -> SteadyState.of(driver("step-up", "420", "16.7", "12")))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "inductor.inductance: fixed-duty control needs an inductor current that comes back to zero in every"
                                + " switching cycle, found '12.0 mH, with which the current flows on from 77 to 91 deg of the line"
                                + " half cycle', allowed: at most 10.0 mH; lower inductor.inductance or switching.frequency, or take"
                                + " driver.control peak-current");
    }

    @Test
    void theLargestThatWorksIsAccepted() {
        assertThat(SteadyState.of(driver("step-up", "420", "16.7", "10")).points())
                .noneMatch(AnglePoint::continuous);
    }

    /** What the design chooses must work: near the crest a step-up string leaves little to reset the inductor. */
    @ParameterizedTest
    @CsvSource({"step-up, 360", "step-up, 420", "step-up, 560", "step-down, 20", "step-down, 130"})
    void theChosenInductanceStaysDiscontinuous(String topology, String voltage) {
        assertThat(SteadyState.of(driver(topology, voltage, "50", "")).points()).hasSize(HalfCycle.STEPS);
    }

    private static Driver driver(String topology, String voltage, String current, String inductance) {
        String spec = "quantity,min,typ,max,unit,note\n"
                + "driver.topology,," + topology + ",,,\n"
                + "driver.control,,fixed-duty,,,\n"
                + "line.voltage,,230,,V,\nline.frequency,,50,,Hz,\n"
                + "string.voltage,," + voltage + ",,V,\nstring.current,," + current + ",,mA,\n"
                + (inductance.isEmpty() ? "" : "inductor.inductance,," + inductance + ",,mH,\n");
        return Sizing.of(SpecReader.read(new StringReader(spec), "spec.csv")).driver();
    }
}
