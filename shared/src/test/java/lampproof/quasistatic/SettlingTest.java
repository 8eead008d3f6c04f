package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SettlingTest {

    static Stream<Arguments> drivers() {
        return Arrays.stream(Topology.values())
                .flatMap(topology -> Arrays.stream(Law.values())
                        .flatMap(law -> Stream.of(0.1, 1.0, 47.0).map(farads -> Arguments.of(topology, law, farads))));
    }

    /** The string's resistance and 47 uF forget slower than ten half cycles; 0.1 uF forgets within a few per cent of one. */
    @ParameterizedTest
    @MethodSource("drivers")
    void every_law_settles_with_small_and_large_output_capacitors(Topology topology, Law law, double microfarads) {
        Driver driver = Sizing.of(Lamps.of(topology, law, "output.capacitance,," + microfarads + ",,uF,"))
                .driver();
        Operation operation = SteadyState.of(driver);
        StringStress string = operation.string();
        assertThat(string.meanCurrent()).isCloseTo(driver.string().current(), withinPercentage(0.01));
        double given = operation.points().stream()
                .mapToDouble(AnglePoint::outputCurrent)
                .average()
                .orElseThrow();
        assertThat(given).isCloseTo(string.meanCurrent(), withinPercentage(0.01));
    }

    static Stream<Law> laws() {
        return Arrays.stream(Law.values());
    }

    /** A low string on a high line: continuous mode whose current creeps from angle to angle. */
    @ParameterizedTest
    @MethodSource("laws")
    void a_low_string_settles_at_the_highest_line(Law law) {
        Driver driver = Sizing.of(Lamps.ofRows(
                        "driver.topology,,step-down,,,",
                        "driver.control,," + law.word() + ",,,",
                        "line.voltage,108,120,132,V,",
                        "line.frequency,,60,,Hz,",
                        "string.voltage,,17.5,,V,",
                        "string.current,,0.6,,A,"))
                .driver();
        Operation operation = SteadyState.of(driver.on(driver.line().at(132)));
        assertThat(operation.string().meanCurrent()).isCloseTo(0.6, within(0.006));
        assertThat(operation.stage().inductor().peak()).isBetween(0.6, 4.0);
    }
}
