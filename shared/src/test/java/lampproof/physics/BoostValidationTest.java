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

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 21.6, eq. (21.131)-(21.152): prints 526 W, 27.4 Ohm, 0.077, 2.11 Ohm
     * and 3.48 A.
     */
    @Test
    void continuous_boost_rectifier_efficiency_leaves_the_printed_switch_resistance() {
        double inputPower = 500 / 0.95;
        double emulated = 120.0 * 120 / inputPower;
        double ratio = CcmBoostRectifierEfficiency.resistanceRatio(ROOT_TWO * 120 / 390, 0.95);
        assertThat(emulated).isCloseTo(27.36, withinPercentage(0.5));
        assertThat(ratio).isCloseTo(0.0771, withinPercentage(0.5));
        assertThat(ratio * emulated).isCloseTo(2.109, withinPercentage(0.5));
        assertThat(new CcmBoostRectifierStress(120, 390, inputPower).switchRms())
                .isCloseTo(3.483, withinPercentage(0.5));
        assertThat(CcmBoostRectifierEfficiency.integral(0.1)).isCloseTo(1.0931, withinPercentage(0.5));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 21.2.2 and figs. 21.9-21.11: simulation with output ripple prints a
     * distortion of 16.7 % at 100 W and continuous conduction at 180 W; closed form and 134.4 W recomputed from eq.
     * (21.31) and (21.35).
     */
    @Test
    void discontinuous_boost_has_the_distortion_and_mode_limit_of_the_printed_simulation() {
        double linePeak = ROOT_TWO * 120;
        DcmBoostLineCurrent boost = new DcmBoostLineCurrent(linePeak, 300, 200e-6, 100e3);
        double distortion = DcmBoostDistortion.thd(300 / linePeak);
        assertThat(distortion).isCloseTo(0.154, within(0.0005)).isBetween(0.145, 0.175);
        assertThat(boost.duty(120)).isLessThan(boost.largestDuty());
        assertThat(boost.duty(180)).isGreaterThan(boost.largestDuty());
        assertThat(boost.largestPower()).isCloseTo(134.4, within(0.05));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 21.5.2: 1 kW, 380 V prints 2 and 3.6 A at 240 V, 6.6 and 5.1 A at
     * 120 V.
     */
    @Test
    void continuous_boost_rectifier_of_1_kW_has_the_printed_rms_currents() {
        CcmBoostRectifierStress european = new CcmBoostRectifierStress(240, 380, 1000);
        CcmBoostRectifierStress american = new CcmBoostRectifierStress(120, 380, 1000);
        assertThat(european.switchRms()).isCloseTo(2.049, withinPercentage(1));
        assertThat(european.diodeRms()).isCloseTo(3.628, withinPercentage(1));
        assertThat(american.switchRms()).isCloseTo(6.567, withinPercentage(1));
        assertThat(american.diodeRms()).isCloseTo(5.131, withinPercentage(1));
    }

    /** Erickson, Maksimović, 3rd ed., 2020, eq. (3.14), (3.23) and fig. 3.15: RL/R 0.02 at duties of 0.5 and 0.7. */
    @Test
    void winding_resistance_takes_the_printed_share_of_gain_and_efficiency() {
        LossyBoost boost = LossyBoost.withInductorResistance(1, 0.02);
        assertThat(boost.conversionRatio(1, 0.5)).isCloseTo(1.852, withinPercentage(0.1));
        assertThat(boost.efficiency(1, 0.5)).isCloseTo(0.9259, withinPercentage(0.1));
        assertThat(boost.conversionRatio(1, 0.7)).isCloseTo(2.727, withinPercentage(0.1));
        assertThat(boost.efficiency(1, 0.7)).isCloseTo(0.8182, withinPercentage(0.1));
    }

    private static double crestFrequency(double power, double lineRms, double voltage, double inductance) {
        return BoundaryBoostTiming.switchingFrequency(power, ROOT_TWO * lineRms, voltage, inductance, Math.PI / 2);
    }
}
