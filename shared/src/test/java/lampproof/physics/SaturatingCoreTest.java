package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SaturatingCoreTest {

    /** 1 mH at 1 A holds 1 mVs; 0.5 mVs more into the tenth that is left, 0.1 mH, are 5 A more. */
    @Test
    void beyond_saturation_the_current_rises_ten_times_as_fast_in_either_direction() {
        assertThat(SaturatingCore.current(1.5, 1, 0.1)).isCloseTo(6, within(1e-12));
        assertThat(SaturatingCore.current(-1.5, 1, 0.1)).isCloseTo(-6, within(1e-12));
    }

    @Test
    void below_saturation_and_without_any_the_current_is_the_flux() {
        assertThat(SaturatingCore.current(0.9, 1, 0.1)).isEqualTo(0.9);
        assertThat(SaturatingCore.current(-40, Double.POSITIVE_INFINITY, 0.1)).isEqualTo(-40);
    }

    @Test
    void flux_is_the_inverse_of_current() {
        for (double flux : new double[] {-3, -1, 0, 0.5, 1, 1.2, 7}) {
            assertThat(SaturatingCore.flux(SaturatingCore.current(flux, 1, 0.1), 1, 0.1))
                    .isCloseTo(flux, within(1e-12));
        }
    }

    @Test
    void a_saturation_current_of_zero_is_refused() {
        assertThatThrownBy(() -> SaturatingCore.current(1, 0, 0.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("saturation current [A] must be above 0, found 0.0");
    }
}
