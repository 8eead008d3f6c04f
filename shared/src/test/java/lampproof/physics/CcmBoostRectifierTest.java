package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CcmBoostRectifierTest {

    /**
     * Erickson, Maksimović, 3rd ed., 2020, table 21.3: limits at VM = V print 0.39 and 0.92; recomputed 0.389, 0.921.
     */
    @Test
    void rms_currents_at_the_lowest_output_are_as_printed() {
        CcmBoostRectifierStress stress = new CcmBoostRectifierStress(100, Math.sqrt(2) * 100, 100);
        assertThat(stress.switchRms()).isCloseTo(0.389, within(5e-4));
        assertThat(stress.diodeRms()).isCloseTo(0.921, within(5e-4));
    }

    /** Infineon DN 2013-01 rev. 1.1, 2016: prints 22.5 A and 14.12 A. */
    @Test
    void inductor_currents_of_the_1200_W_stage_are_as_printed() {
        assertThat(new CcmBoostInductor(85, 400, 1200, 0.25).peakCurrent()).isCloseTo(22.46, withinPercentage(0.05));
        assertThat(new CcmBoostRectifierStress(85, 400, 1200).lineCurrent()).isCloseTo(14.12, withinPercentage(0.05));
    }

    @Test
    void means_agree_with_a_sum_over_the_half_cycle() {
        CcmBoostRectifierStress stress = new CcmBoostRectifierStress(230, 400, 460);
        double diode = 0;
        double all = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double sine = Math.sin(Math.PI * (i + 0.5) / steps);
            double current = Math.sqrt(2) * 2 * sine;
            diode += current * Math.sqrt(2) * 230 * sine / 400 / steps;
            all += current / steps;
        }
        assertThat(stress.diodeMean()).isCloseTo(diode, withinPercentage(1e-4)).isCloseTo(1.15, within(1e-9));
        assertThat(stress.switchMean()).isCloseTo(all - diode, withinPercentage(1e-4));
    }

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (21.131); the printed polynomial is within 0.1 %. */
    @ParameterizedTest
    @CsvSource({"0.05, 1.04441", "0.10, 1.09313", "0.15, 1.14686"})
    void integral_of_the_efficiency(double a, double integral) {
        assertThat(CcmBoostRectifierEfficiency.integral(a))
                .isCloseTo(integral, within(6e-6))
                .isCloseTo(1 + 0.862 * a + 0.78 * a * a, withinPercentage(0.1));
    }

    @Test
    void resistance_ratio_and_efficiency_undo_each_other() {
        double ratio = CcmBoostRectifierEfficiency.resistanceRatio(0.8, 0.97);
        assertThat(CcmBoostRectifierEfficiency.efficiency(0.8, ratio)).isCloseTo(0.97, within(1e-10));
    }

    @Test
    void an_output_below_the_crest_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CcmBoostRectifierStress(230, 300, 10))
                .withMessageStartingWith("line peak over output voltage [-] must be 0.0 to 1.0, found 1.08");
    }
}
