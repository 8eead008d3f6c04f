package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Phase-cut dimming and its snubbers against printed values. */
class DimmerValidationTest {

    private static final double LINE_PEAK = Math.sqrt(2) * 230;

    /**
     * P. S. Bimbhra, Power Electronics, ex. 9.2: 230 V, 45 degrees, 20 Ohm prints 219.304 V, 2404.71 W, 0.95; J. M.
     * Jacob, Power Electronics: Principles and Applications, ex. 8.8: 120 V, 60 degrees prints 108 V.
     */
    @Test
    void phase_cut_line_has_the_printed_rms_voltage_power_and_power_factor() {
        double ratio = PhaseCut.rmsRatio(Math.toRadians(45));
        assertThat(230 * ratio).isCloseTo(219.30, withinPercentage(0.1));
        assertThat(Math.pow(230 * ratio, 2) / 20).isCloseTo(2404.7, withinPercentage(0.1));
        assertThat(ratio).isCloseTo(0.9535, withinPercentage(0.1));
        assertThat(120 * PhaseCut.rmsRatio(Math.toRadians(60))).isCloseTo(107.6, withinPercentage(0.1));
    }

    /**
     * B. R. Gupta, V. Singhal, Power Electronics, ex. 2.37, p. 97: prints 134.62 nF, 50.1 Ohm; P. S. Bimbhra, Power
     * Electronics, ex. 3.6: prints 237.482 us.
     */
    @Test
    void snubber_and_damped_circuit_have_the_printed_values() {
        double capacitance = ThyristorSnubber.capacitance(0.2e-3, LINE_PEAK, 25e6);
        assertThat(capacitance).isCloseTo(134.6e-9, withinPercentage(0.1));
        assertThat(ThyristorSnubber.resistance(0.65, 0.2e-3, capacitance)).isCloseTo(50.1, withinPercentage(0.1));
        assertThat(new DampedStep(10, 1e-3, 5e-6).halfPeriod()).isCloseTo(237.48e-6, withinPercentage(0.1));
    }
}
