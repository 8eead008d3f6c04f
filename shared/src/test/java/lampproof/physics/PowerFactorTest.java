package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power factor, displacement by a capacitor, and its discharge. */
class PowerFactorTest {

    /** Erickson, Maksimović, 3rd ed., 2020, sect. 20.3: a 120 V, 15 A branch loaded to 12 A gives 776 W and 1325 W. */
    @Test
    void available_power_is_as_printed() {
        assertThat(PowerFactor.apparentPower(776 / 0.98, 0.55)).isCloseTo(120 * 12, within(1.0));
        assertThat(PowerFactor.apparentPower(1325 / 0.93, 0.99)).isCloseTo(120 * 12, within(1.5));
    }

    /** Definitions, own example: 325 V peak sine, 0.1 A square wave: 20.690 W of 22.981 VA, 0.9003. */
    @Test
    void a_square_wave_in_phase_has_no_displacement_yet_a_power_factor_of_0_9() {
        double voltage = 325 / Math.sqrt(2);
        double power = 325 * 0.1 * 2 / Math.PI;
        assertThat(PowerFactor.of(power, voltage, 0.1)).isCloseTo(0.9003, within(5e-5));
        assertThat(PowerFactor.of(-power, voltage, 0.1)).isCloseTo(-0.9003, within(5e-5));
    }

    /** Definitions, own example: 9 W at 0.55 and 230 V is 16.36 VA and 71.1 mA. */
    @Test
    void apparent_power_follows_from_the_power_factor() {
        double apparent = PowerFactor.apparentPower(9, 0.55);
        assertThat(apparent).isCloseTo(16.36, within(0.005));
        assertThat(apparent / 230).isCloseTo(71.1e-3, within(5e-5));
    }

    /** Recomputed: current of a capacitor alone [mA] at 230 V 50 Hz and 120 V 60 Hz. */
    @ParameterizedTest
    @CsvSource({"100e-9, 7.226, 4.524", "47e-9, 3.396, 2.126", "150e-9, 10.84, 6.786"})
    void a_capacitor_leaks_through_an_open_dimmer(double capacitance, double european, double american) {
        assertThat(LineCapacitor.current(capacitance, 230, 50)).isCloseTo(european * 1e-3, within(5e-6));
        assertThat(LineCapacitor.current(capacitance, 120, 60)).isCloseTo(american * 1e-3, within(5e-6));
    }

    /** Recomputed from exponential discharge of 0.22 uF in 1 s: line peak, end voltage, resistance [MOhm]. */
    @ParameterizedTest
    @CsvSource({
        "373.4, 34, 1.897",
        "357.8, 34, 1.931",
        "325.3, 34, 2.013",
        "373.4, 60, 2.486",
        "357.8, 60, 2.546",
        "325.3, 60, 2.689"
    })
    void discharge_resistor_of_a_line_capacitor(double peak, double end, double megohm) {
        assertThat(DischargeResistor.largest(0.22e-6, peak, end, 1)).isCloseTo(megohm * 1e6, within(600.0));
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PowerFactor.apparentPower(9, 1.2))
                .withMessage("power factor [-] must be 0.0 to 1.0, found 1.2");
        assertThatIllegalArgumentException().isThrownBy(() -> DischargeResistor.largest(1e-7, 50, 60, 1));
    }
}
