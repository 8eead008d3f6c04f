package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class RippleFactorTest {

    /** Erickson, Maksimović, 3rd ed., 2020, table 3.1: rms 1.00167 I and 1.155 I. */
    @Test
    void rms_is_as_printed() {
        assertThat(RippleFactor.rms(1, 0)).isEqualTo(1);
        assertThat(RippleFactor.rms(1, 0.1)).isCloseTo(1.00167, within(5e-6));
        assertThat(RippleFactor.rms(1, 1)).isCloseTo(1.155, within(5e-4));
    }

    /**
     * S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.18: 2.4 A coil
     * with 20 % ripple prints 2.4 A rms.
     */
    @Test
    void boost_coil_has_the_printed_rms() {
        assertThat(RippleFactor.rms(2.4, 0.24)).isCloseTo(2.404, withinPercentage(0.02));
    }
}
