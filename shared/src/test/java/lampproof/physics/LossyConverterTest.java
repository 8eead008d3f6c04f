package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LossyConverterTest {

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (3.14), (3.23), whose curves are fig. 3.15. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 0.3, 1.400, 0.9800",
        "0.01, 0.5, 1.923, 0.9615",
        "0.01, 0.7, 3.000, 0.9000",
        "0.01, 0.8, 4.000, 0.8000",
        "0.02, 0.3, 1.373, 0.9608",
        "0.02, 0.8, 3.333, 0.6667",
        "0.05, 0.3, 1.296, 0.9074",
        "0.05, 0.5, 1.667, 0.8333",
        "0.05, 0.7, 2.143, 0.6429",
        "0.05, 0.8, 2.222, 0.4444",
        "0.10, 0.3, 1.186, 0.8305",
        "0.10, 0.5, 1.429, 0.7143",
        "0.10, 0.7, 1.579, 0.4737",
        "0.10, 0.8, 1.429, 0.2857"
    })
    void boost_with_winding_resistance(double resistanceRatio, double duty, double gain, double efficiency) {
        LossyBoost boost = LossyBoost.withInductorResistance(100, 100 * resistanceRatio);
        assertThat(boost.conversionRatio(10, duty)).isCloseTo(gain, within(6e-4));
        assertThat(boost.efficiency(10, duty)).isCloseTo(efficiency, within(6e-5));
    }

    /** Same source: largest gain 5.00 at a duty of 0.90 for RL/R 0.01. */
    @Test
    void largest_gain_is_limited_by_the_winding() {
        LossyBoost boost = LossyBoost.withInductorResistance(100, 1);
        assertThat(boost.largestRatio()).isCloseTo(5.00, within(1e-9));
        assertThat(boost.dutyOfLargestRatio()).isCloseTo(0.90, within(1e-9));
        assertThat(boost.conversionRatio(10, 0.9)).isCloseTo(5.00, within(1e-9));
    }

    /** Recomputed from eq. (3.33)-(3.35): 170 V, duty 0.5, 2 kOhm, 10 Ohm, 2 Ohm, 1 V, 1 Ohm. */
    @Test
    void boost_with_all_conduction_losses() {
        LossyBoost boost = new LossyBoost(2000, 10, 2, 1, 1);
        assertThat(boost.conversionRatio(170, 0.5)).isCloseTo(1.9493, within(6e-5));
        assertThat(170 * boost.conversionRatio(170, 0.5)).isCloseTo(331.4, within(0.05));
        assertThat(boost.efficiency(170, 0.5)).isCloseTo(0.9746, within(6e-5));
        assertThat(boost.inductorCurrent(170, 0.5)).isCloseTo(331.4 / 2000 / 0.5, withinPercentage(0.02));
    }

    /** Recomputed by the method of sect. 3.4: 300 V, duty 0.25, 300 Ohm, 10 Ohm, 5 Ohm, 1 V. */
    @Test
    void buck_with_all_conduction_losses() {
        LossyBuck buck = new LossyBuck(300, 10, 5, 1);
        assertThat(buck.outputVoltage(300, 0.25)).isCloseTo(71.57, within(0.006));
        assertThat(buck.efficiency(300, 0.25)).isCloseTo(0.9542, within(6e-5));
    }
}
