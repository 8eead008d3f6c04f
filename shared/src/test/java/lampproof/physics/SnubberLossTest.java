package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class SnubberLossTest {

    /** 100 pF between 0 and 400 V at 65 kHz: C V^2 f = 1.04 W. */
    @Test
    void equal_voltages_burn_twice_the_stored_energy_in_each_cycle() {
        assertThat(SnubberLoss.power(100e-12, 400, 400, 65e3)).isCloseTo(1.04, withinPercentage(1e-9));
    }

    /** The power of 100 Ohm is summed while 47 pF is charged to 430 V, and while it is discharged from 250 V. */
    @Test
    void the_closed_form_is_what_the_resistor_burns_in_an_integration_of_both_edges() {
        double energy = burntBy(430) + burntBy(250);
        assertThat(SnubberLoss.power(47e-12, 430, 250, 1)).isCloseTo(energy, withinPercentage(0.1));
    }

    private static double burntBy(double step) {
        double resistance = 100;
        double capacitance = 47e-12;
        double interval = resistance * capacitance / 1000;
        double energy = 0;
        for (int i = 0; i < 10_000; i++) {
            double current = step * Math.exp(-(i + 0.5) / 1000) / resistance;
            energy += current * current * resistance * interval;
        }
        return energy;
    }
}
