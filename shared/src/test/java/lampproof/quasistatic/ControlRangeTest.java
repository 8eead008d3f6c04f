package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ControlRangeTest {

    private static void refused(Spec spec, String message) {
        Driver driver = Sizing.of(spec).driver();
        assertThatThrownBy(() -> SteadyState.of(driver))
                .isInstanceOf(UserFault.class)
                .hasMessage(message);
    }

    @Test
    void an_on_time_that_is_limited_too_soon_is_refused_with_the_least_that_works() {
        refused(
                Lamps.stepUp(Law.PEAK_CURRENT, "switching.max_on_time,,1,,us,"),
                "switching.max_on_time: peak-current control cannot give the string its current, found '0.938 mA of 16.7 mA "
                        + "with a switch that is closed for at most 1.06 us', allowed: at least 4.77 us; "
                        + "raise switching.max_on_time, or lower inductor.inductance");
    }

    @Test
    void a_blanking_time_that_lets_too_much_current_through_is_refused_with_the_most_that_works() {
        refused(
                Lamps.stepDown(Law.FIXED_OFF_TIME, "switching.blanking,,10,,us,"),
                "switching.blanking: fixed-off-time control cannot keep the string down to its current, found '2.45e+03 mA "
                        + "for 210 mA with a switch that is closed for at least 10.1 us', allowed: at most 1.68 us; "
                        + "lower switching.blanking, or raise inductor.inductance");
    }

    @Test
    void an_off_time_that_is_too_short_is_refused_with_the_least_that_works() {
        refused(
                Lamps.stepDown(Law.FIXED_OFF_TIME, "switching.off_time,,10,,ns,"),
                "switching.off_time: fixed-off-time control cannot keep the string down to its current, found '3.45e+03 mA "
                        + "for 210 mA with a switch that is closed for at least 0.310 us', allowed: at least 2.56 us; "
                        + "raise switching.off_time");
    }

    /** 270 V of a crest of 325 V ask for a duty of 0.83 there and of 1 where the bus has fallen to the string. */
    @Test
    void a_duty_beyond_what_a_clocked_law_can_give_is_refused() {
        refused(
                Lamps.ofRows(
                        "driver.topology,,step-down,,,",
                        "driver.control,,peak-current,,,",
                        "line.voltage,,230,,V,",
                        "line.frequency,,50,,Hz,",
                        "string.voltage,,270,,V,",
                        "string.current,,30,,mA,"),
                "inductor.inductance: peak-current control cannot give the string its current, found '21.1 mA of 30.0 mA "
                        + "with a switch that is closed for at most 14.1 us', allowed: at most 18.0 mH; "
                        + "lower inductor.inductance");
    }

    /** The change that a fault names must really work. */
    @ParameterizedTest
    @CsvSource({
        "peak-current, max_on_time, 1, 4.77",
        "fixed-off-time, max_on_time, 1, 4.77",
        "peak-current, blanking, 10, 4.10",
    })
    void the_change_that_is_named_works(String law, String quantity, double refused, double allowed) {
        Law control = Law.valueOf(law.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
        assertThatThrownBy(() -> SteadyState.of(with(control, quantity, refused)))
                .hasMessageContaining(" " + allowed);
        Operation operation = SteadyState.of(with(control, quantity, allowed));
        assertThat(operation.string().meanCurrent()).isCloseTo(16.7e-3, within(1e-4));
    }

    private static Driver with(Law law, String quantity, double microseconds) {
        return Sizing.of(Lamps.stepUp(law, "switching." + quantity + ",," + microseconds + ",,us,"))
                .driver();
    }
}
