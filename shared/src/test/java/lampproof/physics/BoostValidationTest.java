package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Step-up converters against printed values of textbooks and application notes. */
class BoostValidationTest {

    private static final double ROOT_TWO = Math.sqrt(2);

    /** Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4: 200 W per channel, prints 202 uH, 7 A, 14.1 us. */
    @Test
    void boundary_boost_of_200_W_has_the_printed_inductance_peak_and_on_time() {
        double inputPower = 200 / 0.95;
        double inductance = BoundaryBoostTiming.inductance(inputPower, ROOT_TWO * 265, 400, 52e3);
        assertThat(inductance).isCloseTo(202.3e-6, withinPercentage(0.5));
        assertThat(new BoundaryBoostStress(ROOT_TWO * 85, 400, inputPower).peakCurrent())
                .isCloseTo(7.005, withinPercentage(0.5));
        assertThat(BoundaryBoostTiming.onTime(1.2 * inputPower, ROOT_TWO * 85, inductance))
                .isCloseTo(14.13e-6, withinPercentage(0.5));
    }

    /**
     * Fairchild AN-6086 rev. 1.0.4, 2010 prints about 405 V for 390 uH and 200 W; frequencies recomputed with Erickson,
     * Maksimović, 3rd ed., 2020, eq. (21.65)-(21.73).
     */
    @Test
    void boundary_boost_frequency_over_the_angle_has_the_printed_minima() {
        double voltage = BoundaryBoostTiming.equalFrequencyVoltage(ROOT_TWO * 85, ROOT_TWO * 265);
        assertThat(voltage).isCloseTo(403.96, withinPercentage(0.5)).isCloseTo(405, withinPercentage(0.5));
        assertThat(crestFrequency(200, 85, voltage, 390e-6))
                .isCloseTo(crestFrequency(200, 265, voltage, 390e-6), withinPercentage(0.001));
        assertThat(crestFrequency(200 / 0.95, 85, 400, 202e-6)).isCloseTo(59.42e3, withinPercentage(0.5));
        assertThat(crestFrequency(200 / 0.95, 265, 400, 202e-6)).isCloseTo(52.09e3, withinPercentage(0.5));
    }

    /** Erickson, Maksimović, 3rd ed., 2020, ch. 5, table 5.2: boost K 0.05 D 0.4, buck K 0.1 D 0.5, largest Kcrit. */
    @Test
    void discontinuous_gain_and_mode_boundary_follow_the_table() {
        assertThat(BoostConversionRatio.of(0.4, 0.05)).isCloseTo(2.357, withinPercentage(0.1));
        assertThat(BuckConversionRatio.of(0.5, 0.1)).isCloseTo(0.7656, withinPercentage(0.1));
        assertThat(BoostConversionRatio.criticalParameter(1.0 / 3)).isCloseTo(4.0 / 27, within(1e-12));
        assertThat(BoostConversionRatio.criticalParameter(1.0 / 3)).isCloseTo(0.1481, withinPercentage(0.1));
    }

    private static double crestFrequency(double power, double lineRms, double voltage, double inductance) {
        return BoundaryBoostTiming.switchingFrequency(power, ROOT_TWO * lineRms, voltage, inductance, Math.PI / 2);
    }
}
