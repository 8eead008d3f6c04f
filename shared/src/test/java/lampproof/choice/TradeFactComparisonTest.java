package lampproof.choice;

import static lampproof.choice.Lamps.characteristic;
import static org.assertj.core.api.Assertions.assertThat;

import lampproof.design.Topology;
import org.junit.jupiter.api.Test;

/**
 * What the trade knows of a 120 V lamp of about 10 W behind a dimmer: a step-up driver into about 300 V against a step-down
 * driver into 15 V to 20 V with its dimmer load of 1 kOhm. Common practice, no source.
 */
class TradeFactComparisonTest {

    private static final Comparison COMPARISON = Lamps.comparison(Lamps.ofTheTrade(), "15..20,280..320");
    private static final Candidate STEP_UP = COMPARISON.winner();
    private static final Candidate STEP_DOWN = COMPARISON.rival().orElseThrow();

    @Test
    void step_up_is_recommended() {
        assertThat(STEP_UP.arrangement().topology()).isEqualTo(Topology.STEP_UP);
        assertThat(STEP_DOWN.arrangement().topology()).isEqualTo(Topology.STEP_DOWN);
        assertThat(STEP_UP.arrangement().smoothing())
                .isEqualTo(STEP_DOWN.arrangement().smoothing());
        assertThat(COMPARISON.recommendation()).startsWith("Take the step-up ");
    }

    @Test
    void step_up_is_three_to_eight_points_more_efficient_and_loses_about_half() {
        assertThat(characteristic("efficiency", STEP_UP) - characteristic("efficiency", STEP_DOWN))
                .isBetween(3.0, 8.0);
        assertThat(characteristic("loss", STEP_UP) / characteristic("loss", STEP_DOWN))
                .isBetween(0.35, 0.7);
    }

    @Test
    void step_up_has_the_smaller_inductor() {
        assertThat(characteristic("stored energy, peak", STEP_UP))
                .isLessThan(characteristic("stored energy, peak", STEP_DOWN));
        assertThat(characteristic("core area product", STEP_UP))
                .isLessThan(characteristic("core area product", STEP_DOWN));
    }

    @Test
    void step_up_has_the_better_power_factor() {
        assertThat(characteristic("power factor", STEP_UP)).isGreaterThan(characteristic("power factor", STEP_DOWN));
    }

    @Test
    void step_up_has_fewer_parts_on_less_area() {
        assertThat(characteristic("parts", STEP_UP)).isLessThan(characteristic("parts", STEP_DOWN));
        assertThat(characteristic("board area", STEP_UP)).isLessThan(characteristic("board area", STEP_DOWN));
    }

    @Test
    void step_up_dims_smoother_and_needs_no_dimmer_load() {
        assertThat(characteristic("dead travel of a dimmer", STEP_UP))
                .isLessThan(characteristic("dead travel of a dimmer", STEP_DOWN));
        assertThat(characteristic("dimmer load", STEP_UP)).isZero();
        assertThat(characteristic("dimmer load", STEP_DOWN)).isPositive();
        assertThat(STEP_DOWN.solution().driver().dimming().bleederResistance()).isEqualTo(1000);
    }

    @Test
    void every_difference_is_told_in_words() {
        assertThat(Lamps.subjects(Differences.of(COMPARISON)))
                .contains("efficiency", "loss: diode", "inductor", "line", "light", "dimmer", "parts", "life");
        assertThat(Differences.of(COMPARISON))
                .anySatisfy(difference -> assertThat(difference.text())
                        .contains("the step-up needs no dimmer load; the step-down carries a dimmer load of 1 kOhm"));
    }
}
