package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StringStressTest {

    private static final Ramp FALLING = new Ramp(8, 0, 10, 0);

    /** A triangle of 8 A and 10 s above 2 A is one of 6 A and 7.5 s. */
    @Test
    void the_charge_above_a_current_is_the_triangle_over_it() {
        assertThat(StringStress.chargeAbove(FALLING, 2)).isCloseTo(0.5 * 6 * 7.5, within(1e-12));
        assertThat(StringStress.chargeAbove(FALLING, 0)).isCloseTo(40, within(1e-12));
        assertThat(StringStress.chargeAbove(FALLING, 9)).isZero();
    }

    /** A ramp from 8 A to 4 A above 2 A is a trapezium of 6 A and 2 A. */
    @Test
    void a_ramp_that_stays_above_gives_a_trapezium() {
        assertThat(StringStress.chargeAbove(new Ramp(8, 4, 10, 0), 2)).isCloseTo(40, within(1e-12));
    }
}
