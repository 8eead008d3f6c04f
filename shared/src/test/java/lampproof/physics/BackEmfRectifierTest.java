package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class BackEmfRectifierTest {

    private static final double LINE_PEAK = Math.sqrt(2) * 230;

    /** P. S. Bimbhra, Power Electronics, ex. 3.9, p. 71: prints 745.1 W and 690.74 W; recomputed 745.4 and 690.7. */
    @Test
    void powers_are_as_printed() {
        BackEmfRectifier rectifier = new BackEmfRectifier(LINE_PEAK, 150, 8, 1);
        assertThat(rectifier.loadPower()).isCloseTo(745.1, withinPercentage(0.1));
        assertThat(rectifier.resistorPower()).isCloseTo(690.74, withinPercentage(0.1));
    }

    @Test
    void both_half_cycles_carry_twice_the_current_at_a_better_power_factor() {
        BackEmfRectifier half = new BackEmfRectifier(LINE_PEAK, 150, 8, 1);
        BackEmfRectifier full = new BackEmfRectifier(LINE_PEAK, 150, 8, 2);
        assertThat(full.meanCurrent()).isCloseTo(2 * half.meanCurrent(), withinPercentage(1e-9));
        assertThat(full.powerFactor()).isCloseTo(Math.sqrt(2) * half.powerFactor(), withinPercentage(1e-9));
    }

    @Test
    void without_load_voltage_it_is_a_resistor() {
        assertThat(new BackEmfRectifier(LINE_PEAK, 0, 8, 2).powerFactor()).isCloseTo(1, withinPercentage(1e-9));
    }
}
