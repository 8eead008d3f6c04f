package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Step-down converters and strings behind a rectifier against printed values. */
class BuckValidationTest {

    /**
     * S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.20: prints 81 %.
     */
    @Test
    void buck_loss_budget_reaches_the_printed_efficiency() {
        BuckLossBudget budget = new BuckLossBudget(
                new BuckLossBudget.Supply(15, 5, 3, 50e3),
                new BuckLossBudget.Semiconductors(1, 0.7, 100e-9, 100e-9),
                new BuckLossBudget.Passives(0.05, 0.1, 0.6, 0.25),
                10e-3);
        assertThat(budget.duty()).isCloseTo(0.3878, withinPercentage(0.5));
        assertThat(budget.total()).isCloseTo(3.528, withinPercentage(0.5));
        assertThat(budget.efficiency()).isCloseTo(0.8096, withinPercentage(0.5));
    }

    /**
     * P. S. Bimbhra, Power Electronics, ex. 3.9, p. 71: half wave, 230 V, 150 V behind 8 Ohm prints 4.97 A, 9.29 A,
     * 0.672.
     */
    @Test
    void constant_voltage_load_behind_a_resistor_has_the_printed_currents_and_power_factor() {
        BackEmfRectifier rectifier = new BackEmfRectifier(Math.sqrt(2) * 230, 150, 8, 1);
        assertThat(Math.toDegrees(rectifier.startAngle())).isCloseTo(27.46, withinPercentage(0.5));
        assertThat(rectifier.meanCurrent()).isCloseTo(4.97, withinPercentage(0.5));
        assertThat(rectifier.rmsCurrent()).isCloseTo(9.29, withinPercentage(0.5));
        assertThat(rectifier.powerFactor()).isCloseTo(0.672, withinPercentage(0.5));
    }

    /**
     * J. Xu, M. Zhu, S. Yao, Distortion elimination for buck PFC converter with power factor improvement, J. Power
     * Electronics 15(1), 2015: 94 W, 80 V, measured 0.9874 at 220 V with line filter; ideal value recomputed.
     */
    @Test
    void constant_on_time_buck_front_end_is_plausible_beside_a_measured_one() {
        double ratio = 80 / (Math.sqrt(2) * 220);
        assertThat(BuckLineCurrent.constantOnTime(ratio).powerFactor())
                .isCloseTo(0.9914, within(0.0001))
                .isBetween(0.97, 0.995)
                .isGreaterThan(0.9874);
        assertThat(Math.toDegrees(BuckLineCurrent.conductionAngle(ratio))).isCloseTo(150.2, within(0.05));
    }

    /**
     * P. S. Bimbhra, Power Electronics, ex. 3.16: square wave prints 0.90 and 0.48; 120-degree block: exact Fourier
     * series.
     */
    @Test
    void square_and_block_line_currents_have_the_printed_power_factor() {
        LineCurrentShape square = BuckLineCurrent.constantCurrent(0);
        assertThat(square.powerFactor()).isCloseTo(0.9003, withinPercentage(0.1));
        assertThat(square.thd()).isCloseTo(0.4834, withinPercentage(0.1));
        LineCurrentShape block = BuckLineCurrent.constantCurrent(0.5);
        assertThat(block.powerFactor()).isCloseTo(0.9549, withinPercentage(0.1));
        assertThat(block.relative(3)).isCloseTo(0, within(1e-9));
        assertThat(block.relative(5)).isCloseTo(0.2, withinPercentage(0.1));
    }
}
