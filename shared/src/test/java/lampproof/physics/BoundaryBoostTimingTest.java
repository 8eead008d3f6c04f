package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundaryBoostTimingTest {

    private static final double ROOT_TWO = Math.sqrt(2);

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (21.65)-(21.73): 230 V, 400 V, 15 W, 3 mH. */
    @Test
    void on_time_and_frequency_limits_of_a_small_lamp() {
        double onTime = BoundaryBoostTiming.onTime(15, ROOT_TWO * 230, 3e-3);
        assertThat(onTime).isCloseTo(1.701e-6, withinPercentage(0.05));
        assertThat(frequency(0)).isCloseTo(587.8e3, withinPercentage(0.05));
        assertThat(frequency(Math.PI / 2)).isCloseTo(109.8e3, withinPercentage(0.05));
        assertThat(BoundaryBoostTiming.emulatedResistance(3e-3, onTime))
                .isCloseTo(230.0 * 230 / 15, withinPercentage(1e-9));
    }

    /** Recomputed from the same equations: 85 V, 400 V, 210.5 W, 202 uH. */
    @Test
    void on_time_of_the_published_200_W_stage() {
        assertThat(BoundaryBoostTiming.onTime(210.5, ROOT_TWO * 85, 202e-6))
                .isCloseTo(11.77e-6, withinPercentage(0.05));
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.7", "1.5"})
    void frequency_is_one_over_on_and_off_time(double angle) {
        double onTime = BoundaryBoostTiming.onTime(15, ROOT_TWO * 230, 3e-3);
        double offTime = BoundaryBoostTiming.offTime(onTime, ROOT_TWO * 230 * Math.sin(angle), 400);
        assertThat(frequency(angle)).isCloseTo(1 / (onTime + offTime), withinPercentage(1e-9));
    }

    @Test
    void an_output_below_the_crest_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoundaryBoostTiming.inductance(10, 340, 320, 60e3))
                .withMessage("line peak [V] must be below output voltage [V], found 340.0 against 320.0");
    }

    private static double frequency(double angle) {
        return BoundaryBoostTiming.switchingFrequency(15, ROOT_TWO * 230, 400, 3e-3, angle);
    }
}
