package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SubharmonicStabilityTest {

    /**
     * Erickson, Maksimović, 2nd ed., 2001, sect. 12.1: without ramp the growth is -D/D' and the limit a duty of 0.5.
     */
    @Test
    void without_ramp_half_duty_is_the_limit() {
        assertThat(SubharmonicStability.growth(0.6, 0.4, 0)).isCloseTo(-0.4 / 0.6, within(1e-12));
        assertThat(SubharmonicStability.isStable(0.51, 0.49, 0)).isTrue();
        assertThat(SubharmonicStability.isStable(0.49, 0.51, 0)).isFalse();
    }

    /**
     * Same section: a ramp of half the off slope is stable at any duty, one of the whole off slope settles in one
     * period.
     */
    @Test
    void a_ramp_of_half_the_off_slope_is_always_enough() {
        assertThat(SubharmonicStability.isStable(1e-6, 1, 0.5)).isTrue();
        assertThat(SubharmonicStability.growth(0.1, 1, 1)).isCloseTo(0, within(1e-12));
        assertThat(SubharmonicStability.leastRamp(1e-6, 1)).isCloseTo(0.5, within(1e-6));
        assertThat(SubharmonicStability.leastRamp(2, 1)).isZero();
    }

    @Test
    void the_least_ramp_is_the_edge_of_stability() {
        double ramp = SubharmonicStability.leastRamp(3e4, 8e4);
        assertThat(SubharmonicStability.growth(3e4, 8e4, ramp)).isCloseTo(-1, within(1e-12));
        assertThat(SubharmonicStability.isStable(3e4, 8e4, ramp * 1.01)).isTrue();
    }
}
