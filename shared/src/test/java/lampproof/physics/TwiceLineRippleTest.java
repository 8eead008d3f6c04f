package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class TwiceLineRippleTest {

    /** Infineon DN 2013-01 rev. 1.1, 2016, eq. 31: 1200 W, 60 Hz, 400 V, 10 V prints 795.8 uF. */
    @Test
    void capacitance_is_as_printed() {
        assertThat(TwiceLineRipple.capacitance(1200, 400, 10, 60)).isCloseTo(795.8e-6, withinPercentage(0.01));
    }

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (21.88)-(21.94): 7.074 V both ways. */
    @Test
    void small_ripple_is_the_same_exactly_and_approximately() {
        assertThat(TwiceLineRipple.exact(100, 150e-6, 300, 50)).isCloseTo(7.074, withinPercentage(0.01));
        assertThat(TwiceLineRipple.approximate(100, 150e-6, 300, 50)).isCloseTo(7.074, withinPercentage(0.01));
    }

    /** Energy balance: squared voltage swings by P / (w C) to either side of its mean. */
    @Test
    void large_ripple_keeps_the_energy_balance() {
        double ripple = TwiceLineRipple.exact(9, 0.47e-6, 400, 50);
        double swing = 9 / (2 * Math.PI * 50 * 0.47e-6);
        assertThat(ripple)
                .isCloseTo(Math.sqrt(160e3 + swing) - Math.sqrt(160e3 - swing), withinPercentage(1e-9))
                .isGreaterThan(TwiceLineRipple.approximate(9, 0.47e-6, 400, 50));
    }

    @Test
    void a_capacitor_that_cannot_hold_the_energy_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwiceLineRipple.exact(9, 0.1e-6, 400, 50))
                .withMessageStartingWith("stored energy swing P/(w C V^2) [-] must be 0.0 to 1.0, found 1.79");
    }
}
