package lampproof.physics;

import static lampproof.physics.PreferredSeries.E12;
import static lampproof.physics.PreferredSeries.E24;
import static lampproof.physics.PreferredSeries.E6;
import static lampproof.physics.PreferredSeries.E96;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PreferredSeriesTest {

    /** IEC 60063, as restated in secondary documents. */
    @Test
    void series_are_as_listed() {
        assertThat(decade(E6)).containsExactly(1.0, 1.5, 2.2, 3.3, 4.7, 6.8);
        assertThat(decade(E12)).containsExactly(1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2);
        assertThat(decade(E24))
                .containsExactly(
                        1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6,
                        6.2, 6.8, 7.5, 8.2, 9.1);
        assertThat(decade(E96)).hasSize(96).startsWith(1.00, 1.02, 1.05, 1.07, 1.10, 1.13, 1.15, 1.18, 1.21, 1.24);
        assertThat(decade(E96)).endsWith(8.66, 8.87, 9.09, 9.31, 9.53, 9.76);
    }

    /** Recomputed: rounding 10^(i/24) to two digits misses the standard at exactly eight places. */
    @Test
    void e24_has_its_eight_exceptions() {
        List<Double> exceptions = new ArrayList<>();
        List<Double> listed = decade(E24);
        for (int i = 0; i < 24; i++) {
            if (Math.round(10 * Math.pow(10, i / 24.0)) != Math.round(10 * listed.get(i))) {
                exceptions.add(listed.get(i));
            }
        }
        assertThat(exceptions).containsExactly(2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 8.2);
    }

    @Test
    void values_are_rounded_up_down_and_to_the_nearest() {
        assertThat(E12.up(5e-6)).isEqualTo(5.6e-6);
        assertThat(E12.down(5e-6)).isEqualTo(4.7e-6);
        assertThat(E12.nearest(5e-6)).isEqualTo(4.7e-6);
        assertThat(E24.nearest(9.7e3)).isEqualTo(1e4);
        assertThat(E6.up(7e-9)).isEqualTo(1e-8);
        assertThat(E96.up(1001)).isEqualTo(1020);
        assertThat(E6.down(0.99)).isEqualTo(0.68);
    }

    @ParameterizedTest
    @EnumSource(PreferredSeries.class)
    void a_preferred_value_stays_itself_in_every_decade(PreferredSeries series) {
        for (int exponent = -12; exponent <= 7; exponent++) {
            double value = Double.parseDouble("4.7e" + exponent);
            double preferred = series == E96 ? series.nearest(value) : value;
            assertThat(series.up(preferred)).isEqualTo(preferred);
            assertThat(series.down(preferred)).isEqualTo(preferred);
            double one = Double.parseDouble("1e" + exponent);
            assertThat(series.up(one)).isEqualTo(one);
            assertThat(series.down(one)).isEqualTo(one);
        }
    }

    @Test
    void nothing_is_no_value_to_round() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> E12.up(0))
                .withMessage("value to round must be above 0 and finite, found 0.0");
    }

    /** All members from 1 to below 10, found by walking up. */
    private static List<Double> decade(PreferredSeries series) {
        List<Double> members = new ArrayList<>();
        for (double value = series.up(1); value < 10; value = series.up(value * 1.0001)) {
            members.add(value);
        }
        return members;
    }
}
