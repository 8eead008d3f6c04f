package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lampproof.fault.UserFault;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;

class FeasibilityTest {

    private static Spec lamp(String topology, String line, int string) {
        return Lamps.ofRows(
                "driver.topology,," + topology + ",,,",
                "line.voltage," + line + ",V,",
                "line.frequency,,50,,Hz,",
                "string.voltage,," + string + ",,V,",
                "string.current,,20,,mA,");
    }

    /** sqrt(2) x 253 V = 357.8 V; 5 % more is 375.7 V. */
    @Test
    void a_step_up_string_below_the_highest_crest_is_refused() {
        assertThatThrownBy(() -> Sizing.of(lamp("step-up", "207,230,253", 350)))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "string.voltage: a step-up string voltage must be above the crest of the highest line, found '350.0 V', "
                                + "allowed: at least 375.7 V, 5 % above the crest of 357.8 V; "
                                + "raise string.voltage, or choose driver.topology step-down");
        assertThat(Sizing.of(lamp("step-up", ",230,", 350)).driver().string().knee())
                .as("above the crest of 230 V alone, 325 V")
                .isPositive();
    }

    /** sqrt(2) x 207 V = 292.7 V; 5 % less is 278.1 V. */
    @Test
    void a_step_down_string_above_the_lowest_crest_is_refused() {
        assertThatThrownBy(() -> Sizing.of(lamp("step-down", "207,230,253", 300)))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "string.voltage: a step-down string voltage must be below the crest of the lowest line, found '300.0 V', "
                                + "allowed: at most 278.1 V, 5 % below the crest of 292.7 V; "
                                + "lower string.voltage, or choose driver.topology step-up");
    }
}
