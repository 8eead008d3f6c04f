package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class BoundaryBuckTest {

    private static final Percentage FOUR_DIGITS = withinPercentage(0.05);
    private static final BoundaryBuck BUCK = new BoundaryBuck(Math.sqrt(2) * 230, 80, 12, 1e-3);

    /** Recomputed by integration of the triangles: 230 V, 80 V, 1 mH, 12 W. */
    @Test
    void timing_and_currents_are_as_recomputed() {
        assertThat(BUCK.meanExcess()).isCloseTo(133.4, FOUR_DIGITS);
        assertThat(BUCK.onTime()).isCloseTo(2.249e-6, FOUR_DIGITS);
        assertThat(BUCK.peakCurrent()).isCloseTo(0.5517, FOUR_DIGITS);
        assertThat(BUCK.switchingFrequency(Math.PI / 2)).isCloseTo(109.3e3, FOUR_DIGITS);
        assertThat(BUCK.inductorMean()).isCloseTo(0.1500, FOUR_DIGITS);
        assertThat(BUCK.inductorRms()).isCloseTo(0.2087, FOUR_DIGITS);
        assertThat(BUCK.switchRms()).isCloseTo(0.1115, FOUR_DIGITS);
        assertThat(BUCK.diodeRms()).isCloseTo(0.1765, FOUR_DIGITS);
    }

    @Test
    void rms_currents_agree_with_a_sum_of_triangles() {
        double inductorSquares = 0;
        double switchSquares = 0;
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            double rectified = BUCK.linePeak() * Math.sin(Math.PI * (i + 0.5) / steps);
            double peak = Math.max(0, rectified - 80) * BUCK.onTime() / 1e-3;
            inductorSquares += peak * peak / 3 / steps;
            switchSquares += peak * peak / 3 * 80 / rectified / steps;
        }
        assertThat(BUCK.inductorRms()).isCloseTo(Math.sqrt(inductorSquares), within(1e-8));
        assertThat(BUCK.switchRms()).isCloseTo(Math.sqrt(switchSquares), within(1e-8));
    }

    @Test
    void there_is_no_frequency_while_the_line_is_below_the_string() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BUCK.switchingFrequency(0.1))
                .withMessageStartingWith(
                        "output voltage [V] must be below rectified voltage [V], found 80.0 against 32.");
    }
}
