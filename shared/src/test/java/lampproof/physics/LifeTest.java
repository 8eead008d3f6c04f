package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Life in hours here, as the sources print it; the laws hold in any unit of time. */
class LifeTest {

    private static final double CELSIUS = PhysicalConstants.ZERO_CELSIUS;

    /** Common practice, no source: 50 000 h at 80 degC against 30 000 h at 90 degC; recomputed 0.565 eV. */
    @Test
    void two_lives_give_the_activation_energy() {
        ArrheniusLife life = ArrheniusLife.through(50e3, CELSIUS + 80, 30e3, CELSIUS + 90);
        assertThat(life.activationEnergy()).isCloseTo(0.565, within(5e-4));
        assertThat(life.at(CELSIUS + 80)).isCloseTo(50e3, withinPercentage(1e-9));
        assertThat(life.at(CELSIUS + 90)).isCloseTo(30e3, withinPercentage(1e-9));
        // The logarithm of life is a straight line over inverse temperature.
        double share = (1 / 353.15 - 1 / 358.15) / (1 / 353.15 - 1 / 363.15);
        double independent = 50e3 * Math.pow(30e3 / 50e3, share);
        assertThat(life.at(CELSIUS + 85)).isCloseTo(independent, withinPercentage(1e-9));
    }

    /** Makers' notes, from memory: a 105 degC part lives 16, 8 and 4 times as long at 65, 75 and 85 degC. */
    @Test
    void ten_degrees_double_the_life() {
        assertThat(TenDegreeRule.life(1, CELSIUS + 105, CELSIUS + 65)).isCloseTo(16, within(1e-9));
        assertThat(TenDegreeRule.life(1, CELSIUS + 105, CELSIUS + 75)).isCloseTo(8, within(1e-9));
        assertThat(TenDegreeRule.life(1, CELSIUS + 105, CELSIUS + 85)).isCloseTo(4, within(1e-9));
        double ratio = new ArrheniusLife(0.94, 1, CELSIUS + 105).at(CELSIUS + 65);
        assertThat(ratio).isCloseTo(30.3, within(0.05));
    }

    @Test
    void a_part_above_its_rating_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TenDegreeRule.life(1, 378, 380))
                .withMessage("temperature [K] must be 0.0 to 378.0, found 380.0");
    }

    /** IES TM-21, formulas from memory, recomputed: 3e-6 /h at 55 degC, 6e-6 /h at 85 degC, B 0.99 and 0.98. */
    @Test
    void light_between_two_tested_temperatures() {
        LumenMaintenance cool = new LumenMaintenance(0.99, 3.0e-6);
        LumenMaintenance hot = new LumenMaintenance(0.98, 6.0e-6);
        LumenMaintenance between = LumenMaintenance.between(cool, CELSIUS + 55, hot, CELSIUS + 85, CELSIUS + 70);
        assertThat(cool.lifeTo(0.7)).isCloseTo(115_542, within(1.0));
        assertThat(hot.lifeTo(0.7)).isCloseTo(56_079, within(1.0));
        assertThat(between.initial()).isCloseTo(0.98499, within(6e-6));
        assertThat(between.decayRate()).isCloseTo(4.307e-6, withinPercentage(0.02));
        assertThat(between.lifeTo(0.7)).isCloseTo(79_293, within(10.0));
        assertThat(between.at(between.lifeTo(0.7))).isCloseTo(0.7, within(1e-12));
        assertThat(ArrheniusLife.through(1 / 3.0e-6, CELSIUS + 55, 1 / 6.0e-6, CELSIUS + 85)
                        .activationEnergy())
                .isCloseTo(0.2340, within(6e-5));
    }

    /** Own example: 1 uF that loses 60 % at 320 V works with 0.40 uF and 2.5 times the ripple. */
    @Test
    void a_ceramic_under_bias_keeps_what_its_maker_says() {
        double biased = CeramicBias.capacitance(1e-6, 0.60);
        assertThat(biased).isCloseTo(0.40e-6, withinPercentage(1e-6));
        assertThat(1e-6 / biased).isCloseTo(2.5, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> CeramicBias.capacitance(1e-6, 1));
    }
}
