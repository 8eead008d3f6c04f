package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LineCurrentShapeTest {

    /** Fourier series of the square wave: 4 / (n pi). */
    @Test
    void square_wave_has_the_harmonics_of_its_series() {
        LineCurrentShape square = LineCurrentShape.of(angle -> 1, 0, Math.PI);
        for (int order = 1; order <= 39; order += 2) {
            assertThat(square.harmonic(order)).isCloseTo(4 / (order * Math.PI * Math.sqrt(2)), within(1e-10));
        }
        assertThat(square.harmonic(38)).isZero();
        assertThat(square.mean()).isCloseTo(1, within(1e-12));
    }

    @Test
    void sine_has_unity_power_factor_and_no_distortion() {
        LineCurrentShape sine = LineCurrentShape.of(Math::sin, 0, Math.PI);
        assertThat(sine.powerFactor()).isCloseTo(1, within(1e-12));
        assertThat(sine.thd()).isLessThan(1e-6);
        assertThat(sine.rms()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void a_shifted_sine_is_displaced_but_not_distorted() {
        LineCurrentShape shifted = LineCurrentShape.of(angle -> Math.sin(angle + 0.5), 0, Math.PI);
        assertThat(shifted.displacementFactor()).isCloseTo(Math.cos(0.5), within(1e-12));
        assertThat(shifted.powerFactor()).isCloseTo(Math.cos(0.5), within(1e-12));
        assertThat(shifted.thd()).isLessThan(1e-6);
    }

    @Test
    void power_factor_is_distortion_factor_times_displacement_factor() {
        LineCurrentShape early = LineCurrentShape.of(angle -> 1, 0.3, 1.9);
        assertThat(early.powerFactor())
                .isCloseTo(PowerFactor.of(early.thd(), early.displacementFactor()), within(1e-12));
    }

    /** Coefficients of a triangle with its corner at 60 degrees, integrated by parts. */
    @Test
    void corners_are_edges() {
        double corner = Math.PI / 3;
        double rise = 1 / corner;
        double fall = -1 / (Math.PI - corner);
        LineCurrentShape triangle = LineCurrentShape.of(
                angle -> angle < corner ? rise * angle : fall * (angle - Math.PI), 0, corner, Math.PI);
        double sine = (rise - fall) * Math.sin(7 * corner) / 49;
        double cosine = (rise * (Math.cos(7 * corner) - 1) + fall * (-1 - Math.cos(7 * corner))) / 49;
        assertThat(triangle.mean()).isCloseTo(0.5, within(1e-12));
        assertThat(triangle.rms()).isCloseTo(Math.sqrt(1.0 / 3), within(1e-12));
        assertThat(triangle.harmonic(7)).isCloseTo(Math.sqrt(2) / Math.PI * Math.hypot(sine, cosine), within(1e-12));
    }

    @Test
    void conduction_beyond_the_half_cycle_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> LineCurrentShape.of(angle -> 1, 0, 4));
        assertThatIllegalArgumentException().isThrownBy(() -> LineCurrentShape.of(angle -> 1, 2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> LineCurrentShape.of(angle -> 0, 0, 1));
    }
}
