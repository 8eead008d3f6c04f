package lampproof.physics;

import static lampproof.physics.PiecewiseCurrent.Segment.flat;
import static lampproof.physics.PiecewiseCurrent.Segment.ramp;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Rms currents and capacitor ripple against printed values. */
class WaveformValidationTest {

    /** Erickson, Maksimović, 3rd ed., 2020, app. A, eq. (A.18): prints 3.76 A; table 3.1: 1.0033 and 1.3333. */
    @Test
    void rms_of_six_segments_and_ripple_factors_are_as_printed() {
        double micro = 1e-6 / 10e-6;
        PiecewiseCurrent spike = PiecewiseCurrent.of(
                ramp(0.2 * micro, 0, 20),
                flat(0.2 * micro, 20),
                ramp(0.1 * micro, 20, 2),
                flat(5 * micro, 2),
                ramp(0.2 * micro, 2, 0),
                flat(4.3 * micro, 0));
        assertThat(spike.rms()).isCloseTo(3.765, withinPercentage(0.2));
        assertThat(RippleFactor.conductionLoss(1, 0.1)).isCloseTo(1.0033, withinPercentage(0.2));
        assertThat(RippleFactor.conductionLoss(1, 1)).isCloseTo(1.3333, withinPercentage(0.2));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 21.2.2 and eq. (21.88)-(21.94): prints 7 V; Fairchild AN-6086 rev.
     * 1.0.4, 2010, sect. 4: prints 398 uF.
     */
    @Test
    void twice_line_ripple_and_its_capacitor_are_as_printed() {
        assertThat(TwiceLineRipple.exact(100, 150e-6, 300, 50)).isCloseTo(7.07, withinPercentage(1));
        assertThat(TwiceLineRipple.capacitance(400, 400, 8, 50)).isCloseTo(397.9e-6, withinPercentage(1));
    }
}
