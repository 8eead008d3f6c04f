package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConversionRatioTest {

    private static final Percentage FOUR_DIGITS = withinPercentage(0.05);

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, ch. 5, table 5.2. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.4, 2.357, 0.2947", "0.10, 0.5, 2.158, 0.4317", "0.01, 0.3, 3.541, 0.1180"})
    void discontinuous_boost_has_the_gain_of_the_table(double parameter, double duty, double ratio, double diodeDuty) {
        assertThat(BoostConversionRatio.of(duty, parameter)).isCloseTo(ratio, FOUR_DIGITS);
        assertThat(BoostConversionRatio.diodeDuty(duty, parameter)).isCloseTo(diodeDuty, FOUR_DIGITS);
    }

    /** Recomputed from the same table. */
    @Test
    void discontinuous_buck_has_the_gain_of_the_table() {
        assertThat(BuckConversionRatio.of(0.5, 0.1)).isCloseTo(0.7656, FOUR_DIGITS);
        assertThat(BuckConversionRatio.diodeDuty(0.5, 0.1)).isCloseTo(0.2612, FOUR_DIGITS);
        assertThat(BoostConversionRatio.criticalParameter(0.4)).isCloseTo(0.144, withinPercentage(1e-9));
    }

    /** D. W. Hart, Power Electronics, 2011, from memory: 20 V boost prints 60 V; 24 V buck prints 13.9 V. */
    @Test
    void textbook_examples_with_resistive_load() {
        double boost = ConductionParameter.of(100e-6, 50, 1 / 15e3);
        assertThat(20 * BoostConversionRatio.of(0.6, boost)).isCloseTo(60, FOUR_DIGITS);
        double buck = ConductionParameter.of(200e-6, 20, 1 / 10e3);
        assertThat(24 * BuckConversionRatio.of(0.4, buck)).isCloseTo(13.9, withinPercentage(0.2));
    }

    /** Volt-second and charge balance; 150 V, 1.5 mH, 60 kHz, duty 0.3, 60 mA; a switched simulation gave 337.33 V. */
    @Test
    void discontinuous_boost_into_a_string_current() {
        assertThat(BoostConversionRatio.discontinuousVoltage(150, 0.3, 1.5e-3, 60e3, 0.06))
                .isCloseTo(337.5, withinPercentage(1e-9));
    }

    @Test
    void voltage_into_a_current_agrees_with_the_ratio_into_a_resistor() {
        double parameter = ConductionParameter.of(1e-3, 500, 1 / 60e3);
        double buck = 300 * BuckConversionRatio.discontinuous(0.1, parameter);
        assertThat(BuckConversionRatio.discontinuousVoltage(300, 0.1, 1e-3, 60e3, buck / 500))
                .isCloseTo(buck, withinPercentage(1e-9));
        double weak = ConductionParameter.of(1e-3, 5000, 1 / 60e3);
        double boost = 150 * BoostConversionRatio.discontinuous(0.4, weak);
        assertThat(BoostConversionRatio.discontinuousVoltage(150, 0.4, 1e-3, 60e3, boost / 5000))
                .isCloseTo(boost, withinPercentage(1e-9));
    }

    @Test
    void both_modes_meet_at_the_critical_parameter() {
        double buck = BuckConversionRatio.criticalParameter(0.3);
        assertThat(BuckConversionRatio.discontinuous(0.3, buck)).isCloseTo(0.3, withinPercentage(1e-9));
        assertThat(BuckConversionRatio.of(0.3, 2 * buck)).isEqualTo(0.3);
        double boost = BoostConversionRatio.criticalParameter(0.3);
        assertThat(BoostConversionRatio.discontinuous(0.3, boost)).isCloseTo(1 / 0.7, withinPercentage(1e-9));
        assertThat(BoostConversionRatio.of(0.3, 2 * boost)).isCloseTo(1 / 0.7, withinPercentage(1e-9));
    }

    @Test
    void the_discontinuous_formula_is_refused_in_continuous_conduction() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BuckConversionRatio.discontinuous(0.5, 0.8))
                .withMessage("conduction parameter [-] must be 0.0 to 0.5, found 0.8");
    }
}
