package lampproof.prediction;

import static lampproof.prediction.SolvedLamps.solve;
import static lampproof.prediction.SolvedLamps.value;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Path;
import lampproof.design.Driver;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;

/**
 * A 120 V lamp of about 10 W: a step-up driver into about 300 V against a step-down driver into 15 V to 20 V with the 1 kOhm
 * load that a dimmer needs there. Common practice, no source.
 */
class TradeFactsTest {

    private final Solution stepUp = solved("string-300-v-step-up.csv");
    private final Solution stepDown = solved("string-17-v-step-down.csv");

    @Test
    void step_up_is_three_to_eight_points_more_efficient() {
        assertThat(value(stepUp, "efficiency") - value(stepDown, "efficiency")).isBetween(3.0, 8.0);
    }

    @Test
    void step_up_loses_about_half() {
        assertThat(value(stepUp, "loss.total") / value(stepDown, "loss.total")).isBetween(0.35, 0.7);
    }

    @Test
    void step_up_has_the_better_power_factor() {
        assertThat(value(stepUp, "line.power_factor")).isGreaterThan(value(stepDown, "line.power_factor"));
    }

    @Test
    void step_up_has_the_smaller_inductor() {
        assertThat(storedEnergy(stepUp)).isLessThan(storedEnergy(stepDown));
        assertThat(areaProduct(stepUp)).isLessThan(areaProduct(stepDown));
        assertThat(stepUp.driver().inductor().winding().core().areaProduct())
                .isLessThanOrEqualTo(
                        stepDown.driver().inductor().winding().core().areaProduct());
    }

    private static double storedEnergy(Solution solution) {
        double peak = value(solution, "inductor.current.peak");
        return 0.5 * inductance(solution) * peak * peak;
    }

    private static double areaProduct(Solution solution) {
        return inductance(solution)
                * value(solution, "inductor.current.peak")
                * solution.stage().inductor().rms();
    }

    private static double inductance(Solution solution) {
        Driver driver = solution.driver();
        return driver.inductor().inductance();
    }

    private static Solution solved(String name) {
        try {
            return solve(SpecReader.read(
                    Path.of(TradeFactsTest.class.getResource(name).toURI())));
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
