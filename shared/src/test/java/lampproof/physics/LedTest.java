package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class LedTest {

    private static final double CELSIUS = PhysicalConstants.ZERO_CELSIUS;
    private static final DiodeModel.Point LOW = new DiodeModel.Point(2.84, 20e-3);
    private static final DiodeModel.Point HIGH = new DiodeModel.Point(3.05, 60e-3);

    /** Own example, recomputed: 72 LEDs of 3.05 V at 60 mA and 25 degC, -2.2 mV/K. */
    @Test
    void a_string_is_lower_hot_and_higher_cold() {
        LedString string = new LedString(72, 2.75, 5, -2.2e-3, CELSIUS + 25);
        assertThat(string.voltage(60e-3, CELSIUS + 25)).isCloseTo(219.6, within(0.05));
        assertThat(string.voltage(60e-3, CELSIUS + 95)).isCloseTo(208.5, within(0.05));
        assertThat(string.voltage(60e-3, CELSIUS - 20)).isCloseTo(226.7, within(0.05));
        assertThat(60e-3 * string.voltage(60e-3, CELSIUS + 95)).isCloseTo(12.51, within(0.005));
    }

    @Test
    void current_and_voltage_of_a_string_undo_each_other() {
        LedString string = new LedString(10, 2.75, 5, -2e-3, CELSIUS + 25);
        assertThat(string.current(string.voltage(40e-3, 350), 350)).isCloseTo(40e-3, within(1e-12));
        assertThat(string.current(20, 350)).isZero();
        assertThat(string.dynamicResistance()).isEqualTo(50);
    }

    /** Own example, recomputed: 2.84 V at 20 mA, 3.05 V at 60 mA, 27 degC, emission coefficient 3. */
    @Test
    void a_fit_through_two_points_meets_both() {
        DiodeModel led = DiodeModel.through(LOW, HIGH, 3, CELSIUS + 27);
        assertThat(led.seriesResistance()).isCloseTo(3.1188, within(6e-5));
        assertThat(led.saturationCurrent()).isCloseTo(5.6859e-18, withinPercentage(0.01));
        assertThat(led.voltage(20e-3)).isCloseTo(2.84, within(1e-9));
        assertThat(led.voltage(60e-3)).isCloseTo(3.05, within(1e-9));
        assertThat(led.dynamicResistance(20e-3))
                .isCloseTo((led.voltage(20.01e-3) - 2.84) / 1e-5, withinPercentage(0.1));
    }

    /** Same data: a fit at 60 mA alone needs 38.15 Ohm and gives 1.496 V at 20 mA. */
    @Test
    void a_fit_through_one_point_is_wrong_at_another() {
        DiodeModel led = DiodeModel.through(HIGH, 1e-14, 1, CELSIUS + 27);
        assertThat(led.seriesResistance()).isCloseTo(38.15, within(0.005));
        assertThat(led.voltage(20e-3)).isCloseTo(1.496, within(5e-4));
    }

    @Test
    void an_emission_coefficient_that_leaves_no_resistance_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiodeModel.through(LOW, HIGH, 10, CELSIUS + 27))
                .withMessageStartingWith("series resistance [Ohm] must be 0 or more and finite, found -1.8");
    }

    /** Straight line, range from memory. */
    @Test
    void flux_falls_with_temperature() {
        assertThat(RelativeFlux.at(CELSIUS + 85, CELSIUS + 25, 0.002)).isCloseTo(0.88, within(1e-12));
        assertThat(RelativeFlux.at(CELSIUS + 825, CELSIUS + 25, 0.002)).isZero();
    }
}
