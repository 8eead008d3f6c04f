package lampproof.physics;

import static lampproof.physics.PiecewiseCurrent.Segment.flat;
import static lampproof.physics.PiecewiseCurrent.Segment.halfSine;
import static lampproof.physics.PiecewiseCurrent.Segment.ramp;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import org.junit.jupiter.api.Test;

class PiecewiseCurrentTest {

    /** J. M. Jacob, Power Electronics: Principles and Applications, ex. 7.3: prints 325.0 mA, 324.0 as a rectangle. */
    @Test
    void trapezoid_has_the_printed_rms() {
        assertThat(PiecewiseCurrent.of(ramp(0.42, 0.433, 0.567)).rms()).isCloseTo(0.3250, within(5e-5));
        assertThat(PiecewiseCurrent.of(flat(0.42, 0.5)).rms()).isCloseTo(0.3240, within(5e-5));
    }

    /** Erickson, Maksimović, 3rd ed., 2020, app. A: triangle Ipk sqrt(D/3); half sine Ipk sqrt(D/2). */
    @Test
    void triangle_and_half_sine_follow_their_formulas() {
        PiecewiseCurrent triangle = PiecewiseCurrent.of(ramp(0.3, 0, 0.6));
        assertThat(triangle.rms()).isCloseTo(0.18974, within(5e-6));
        assertThat(triangle.mean()).isCloseTo(0.0900, within(1e-12));
        PiecewiseCurrent sine = PiecewiseCurrent.of(halfSine(0.5, 2));
        assertThat(sine.rms()).isCloseTo(1, within(1e-12));
        assertThat(sine.mean()).isCloseTo(2 / Math.PI, within(1e-12));
    }

    /** Same formulas: inductor 0.3 A, 0.24 A peak to peak, duty 0.2. */
    @Test
    void switch_current_counts_the_ripple() {
        assertThat(PiecewiseCurrent.of(ramp(0.2, 0.18, 0.42)).rms()).isCloseTo(0.13770, within(5e-6));
        assertThat(PiecewiseCurrent.of(ramp(0.2, 0.18, 0.42), ramp(0.8, 0.42, 0.18))
                        .rms())
                .isCloseTo(0.30790, within(5e-6));
    }

    @Test
    void ten_tenths_make_a_whole_period() {
        PiecewiseCurrent constant = new PiecewiseCurrent(Collections.nCopies(10, flat(0.1, 3)));
        assertThat(constant.rms()).isCloseTo(3, withinPercentage(1e-9));
    }

    @Test
    void more_than_a_period_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PiecewiseCurrent.of(flat(0.75, 1), flat(0.5, 1)))
                .withMessageStartingWith("sum of shares [-] must be 0.0 to 1.0")
                .withMessageEndingWith("found 1.25");
    }
}
