package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class HoldUpTest {

    /** Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4: 400 W, 20 ms, 400 V to 330 V prints 313 uF. */
    @Test
    void capacitance_is_as_printed() {
        assertThat(HoldUp.capacitance(400, 20e-3, 400, 330)).isCloseTo(313e-6, withinPercentage(0.1));
    }

    /**
     * Infineon DN 2013-01 rev. 1.1, 2016, eq. 30: 1200 W, 400 V to 340 V prints 900.9 uF for 16.6 ms, which belongs
     * to 16.67 ms; recomputed 897.3 uF.
     */
    @Test
    void second_capacitance_is_as_recomputed() {
        assertThat(HoldUp.capacitance(1200, 16.6e-3, 400, 340)).isCloseTo(897.3e-6, withinPercentage(0.01));
        assertThat(HoldUp.capacitance(1200, 16.67e-3, 400, 340)).isCloseTo(900.9e-6, withinPercentage(0.05));
    }

    @Test
    void valley_and_capacitance_undo_each_other() {
        assertThat(HoldUp.valley(7, 8e-3, 325, HoldUp.capacitance(7, 8e-3, 325, 120)))
                .isCloseTo(120, withinPercentage(1e-9));
    }

    @Test
    void an_emptied_capacitor_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HoldUp.valley(10, 10e-3, 325, 0.1e-6))
                .withMessageStartingWith("energy drawn over energy stored [-] must be 0.0 to 1.0, found 18.9");
    }
}
