package lampproof.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.quasistatic.ConductedNoise;
import lampproof.quasistatic.SteadyState;
import lampproof.spec.Spec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NeededFilterTest {

    static Stream<Spec> lamps() {
        return Arrays.stream(Law.values())
                .flatMap(law -> Stream.of("47", "220")
                        .map(nanofarads -> "bus.capacitance,," + nanofarads + ",,nF,")
                        .flatMap(bus -> Stream.of(Lamps.stepUp(law, bus), Lamps.stepDown(law, bus))));
    }

    /** Every forty-eighth of a decade, from the largest choke down: the last before the first that passes a limit. */
    @ParameterizedTest
    @MethodSource("lamps")
    void the_corner_is_that_of_the_least_choke_down_to_which_every_limit_is_kept(Spec spec) {
        Driver driver = Sizing.of(spec).driver();
        ConductedNoise noise = ConductedNoise.of(SteadyState.of(driver));
        double kept = 0;
        for (int k = 192; k >= -192; k--) {
            Driver other = NeededFilter.with(driver, Math.pow(10, k / 48.0));
            if (passesLimit(noise.through(other))) {
                break;
            }
            kept = corner(other);
        }
        assertThat(NeededFilter.corner(noise, driver)).isCloseTo(kept, within(1e-9 * kept));
    }

    private static boolean passesLimit(ConductedNoise noise) {
        return NoiseMargin.quasiPeak(noise.frequency(), noise::atCrest).decibels() < 0
                || NoiseMargin.average(noise.frequency(), noise::mean).decibels() < 0;
    }

    private static double corner(Driver driver) {
        double capacitance = driver.filter().capacitance() + driver.busCapacitance();
        return 1 / (2 * Math.PI * Math.sqrt(driver.filter().inductance() * capacitance));
    }
}
