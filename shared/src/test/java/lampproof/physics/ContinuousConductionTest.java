package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Duty, ripple and capacitors in continuous conduction. */
class ContinuousConductionTest {

    /**
     * S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.17: 12 V to 5 V
     * with 0.5 and 0.7 V of drop prints 41.7 % and 46.7 %.
     */
    @Test
    void step_down_duty_with_and_without_drops_is_as_printed() {
        assertThat(ContinuousDuty.buck(12, 5, 0, 0)).isCloseTo(0.417, within(5e-4));
        assertThat(ContinuousDuty.buck(12, 5, 0.5, 0.7)).isCloseTo(0.467, within(5e-4));
    }

    /** Volt-second balance, own example: 325 V to 24 V, 0.5 V and 1.2 V of drop. */
    @Test
    void drops_move_the_duty_of_a_short_string_by_five_per_cent() {
        assertThat(ContinuousDuty.buck(325, 24, 0.5, 1.2)).isCloseTo(0.07737, within(5e-6));
        assertThat(ContinuousDuty.buck(325, 24, 0, 0)).isCloseTo(0.07385, within(5e-6));
    }

    /**
     * M. H. Rashid, Power Electronics: Devices, Circuits and Applications, 4th ed., ex. 5.6: 66.67 %, 0.89 A, 60.61
     * mV.
     */
    @Test
    void step_up_example_has_the_printed_duty_ripple_and_peak() {
        double duty = ContinuousDuty.boost(5, 15, 0, 0);
        double ripple = InductorRipple.boost(5, 15, 150e-6, 25e3);
        assertThat(duty).isCloseTo(0.6667, within(5e-5));
        assertThat(ripple).isCloseTo(0.89, within(0.005));
        assertThat(0.5 / (1 - duty) + ripple / 2).isCloseTo(1.9444, within(1e-4));
        assertThat(OutputCapacitorRipple.boost(0.5, duty, 220e-6, 25e3)).isCloseTo(60.61e-3, withinPercentage(0.02));
    }

    /**
     * M. H. Rashid, 4th ed., ex. 5.5: 12 V to 5 V, 0.8 A and 20 mV of ripple at 25 kHz prints 41.67 %, 145.83 uH, 200
     * uF.
     */
    @Test
    void step_down_example_has_the_printed_inductor_and_capacitor() {
        assertThat(ContinuousDuty.buck(12, 5, 0, 0)).isCloseTo(0.4167, within(5e-5));
        assertThat(InductorRipple.buckInductance(12, 5, 0.8, 25e3)).isCloseTo(145.83e-6, withinPercentage(0.01));
        assertThat(OutputCapacitorRipple.buck(0.8, 200e-6, 25e3)).isCloseTo(20e-3, withinPercentage(1e-6));
    }

    /** J. M. Jacob, Power Electronics: Principles and Applications, ex. 7.2: recomputed without rounding 132.6 mA. */
    @Test
    void small_step_down_has_the_ripple_of_the_example() {
        assertThat(InductorRipple.buck(12, 5, 220e-6, 100e3)).isCloseTo(132.6e-3, withinPercentage(0.05));
    }

    /**
     * J. M. Jacob, ex. 7.6: 12 V to 22 V, 0.7 A at 90 % prints 154.29 uH with a duty rounded to 0.45, 1.57 A.
     */
    @Test
    void step_up_with_losses_is_as_printed_within_its_rounding() {
        assertThat(ContinuousDuty.boost(12, 22, 0, 0)).isCloseTo(0.45, within(0.005));
        assertThat(InductorRipple.boostInductance(12, 22, 0.35, 100e3)).isCloseTo(154.29e-6, withinPercentage(1.2));
        double ripple = InductorRipple.boost(12, 22, 154.29e-6, 100e3);
        assertThat(1.4 + ripple / 2).isCloseTo(1.57, within(0.008));
    }

    /** S. Franco, 3rd ed., ex. 11.18 and 11.19: 5 V to 12 V, 1 A, 100 kHz prints 61 uH, 2.64 A, 177 uF, 25 mOhm. */
    @Test
    void step_up_coil_and_capacitor_are_as_printed() {
        double coil = 1 * 12 / 5.0;
        double duty = ContinuousDuty.boost(5, 12, 0, 0);
        assertThat(InductorRipple.boostInductance(5, 12, 0.2 * coil, 100e3)).isCloseTo(60.8e-6, withinPercentage(0.1));
        assertThat(coil + InductorRipple.boost(5, 12, 60.8e-6, 100e3) / 2).isCloseTo(2.64, within(0.005));
        assertThat(OutputCapacitorRipple.boost(1, duty, 177e-6, 100e3)).isCloseTo(0.1 / 3, withinPercentage(1.2));
        assertThat(OutputCapacitorRipple.largestResistance(0.2 / 3, 1.1 * coil)).isCloseTo(25.3e-3, within(5e-5));
    }

    /** D. W. Hart, Power Electronics, 2011, from memory: 50 V, duty 0.4, 400 uH, 100 uF, 20 kHz: 1.5 A, 0.469 %. */
    @Test
    void remembered_step_down_example() {
        double ripple = InductorRipple.buck(50, 20, 400e-6, 20e3);
        assertThat(ripple).isCloseTo(1.5, within(1e-9));
        assertThat(OutputCapacitorRipple.buck(ripple, 100e-6, 20e3) / 20).isCloseTo(0.00469, within(5e-6));
    }

    /** Rms less mean, own example: 0.35 A, duty 0.2, with and without a ripple of 0.24 A. */
    @Test
    void input_capacitor_carries_the_switching_ripple() {
        assertThat(BuckInputCapacitorRipple.rms(0.35, 0.24, 0.2)).isCloseTo(0.1434, within(5e-5));
        assertThat(BuckInputCapacitorRipple.rms(0.35, 0, 0.2)).isCloseTo(0.1400, within(5e-5));
    }

    @Test
    void a_step_down_above_its_input_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ContinuousDuty.buck(30, 36, 0, 0))
                .withMessage("output voltage [V] must be 0.0 to 30.0, found 36.0");
        assertThatIllegalArgumentException().isThrownBy(() -> InductorRipple.boost(30, 20, 1e-3, 1e5));
    }
}
