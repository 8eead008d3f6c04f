package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class DcmBoostLineCurrentTest {

    private static final DcmBoostLineCurrent BOOST = new DcmBoostLineCurrent(Math.sqrt(2) * 120, 300, 200e-6, 100e3);

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 21.2.2: 170 V, 300 V, 120 W, 100 kHz prints 260 uH; recomputed
     * 260.9.
     */
    @Test
    void largest_inductance_is_as_printed() {
        assertThat(new DcmBoostLineCurrent(170, 300, 200e-6, 100e3).largestInductance(120))
                .isCloseTo(260.9e-6, withinPercentage(0.05));
    }

    /** Recomputed for the same circuit at 100 W from eq. (21.31). */
    @Test
    void duty_and_peak_current_are_as_recomputed() {
        double duty = BOOST.duty(100);
        assertThat(duty).isCloseTo(0.3746, withinPercentage(0.05));
        assertThat(BOOST.peakCurrent(duty)).isCloseTo(3.179, withinPercentage(0.05));
    }

    /** The same for every inductance. */
    @Test
    void crest_current_is_that_at_the_crest_of_the_duty_for_the_power() {
        assertThat(DcmBoostLineCurrent.crestCurrent(Math.sqrt(2) * 120, 300, 100))
                .isCloseTo(BOOST.at(BOOST.duty(100), Math.PI / 2), withinPercentage(1e-9));
    }

    @Test
    void line_current_carries_the_power_that_was_asked_for() {
        double duty = BOOST.duty(100);
        double power = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double angle = Math.PI * (i + 0.5) / steps;
            power += BOOST.at(duty, angle) * Math.sqrt(2) * 120 * Math.sin(angle) / steps;
        }
        assertThat(power).isCloseTo(100, withinPercentage(1e-4));
        assertThat(BOOST.duty(BOOST.largestPower())).isCloseTo(BOOST.largestDuty(), withinPercentage(1e-9));
    }
}
