package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CeramicBiasTest {

    @Test
    void at_the_rated_voltage_the_share_is_left_that_was_stated() {
        double half = CeramicBias.halfVoltage(0.3, 50);
        assertThat(CeramicBias.left(50, half)).isCloseTo(0.3, within(1e-12));
        assertThat(CeramicBias.left(half, half)).isCloseTo(0.5, within(1e-12));
        assertThat(CeramicBias.left(0, half)).isEqualTo(1);
    }

    @Test
    void a_capacitor_that_keeps_all_of_it_has_no_half_voltage() {
        double half = CeramicBias.halfVoltage(1, 50);
        assertThat(half).isInfinite();
        assertThat(CeramicBias.left(400, half)).isEqualTo(1);
        assertThat(CeramicBias.energy(2e-6, half, 10)).isCloseTo(100e-6, within(1e-15));
    }

    /** Energy is the integral of capacitance times voltage, summed here in ten thousand steps, right to 1.5e-9 of it. */
    @Test
    void the_energy_is_what_charging_it_takes() {
        double half = 32.7;
        double step = 40 / 1e4;
        double sum = 0;
        for (int index = 0; index < 10_000; index++) {
            double voltage = (index + 0.5) * step;
            sum += 3.3e-6 * CeramicBias.left(voltage, half) * voltage * step;
        }
        assertThat(CeramicBias.energy(3.3e-6, half, 40)).isCloseTo(sum, within(1e-8 * sum));
    }
}
