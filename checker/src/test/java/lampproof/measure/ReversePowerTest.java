package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReversePowerTest {

    /** Turned off at 2 s within a piece of 1 s, it sends 3 A back at 100 V for 2 s: half of the first piece and all of the second. */
    @Test
    void half_of_the_piece_in_which_the_diode_is_turned_off_counts() {
        double[][] rows = {{0, 1, 5}, {1, 1, 5}, {2, -100, -3}, {3, -100, -3}, {3, -100, 0}, {5, -100, 0}, {6, 1, 5}};
        assertThat(power(rows)).isCloseTo((150 + 300) / 6.0, within(1e-12));
    }

    @Test
    void a_diode_that_conducts_or_is_swung_forward_counts_nothing() {
        assertThat(power(new double[][] {{0, 1, 5}, {1, 1, 4}, {2, -50, 0.1}, {3, -100, 0}, {4, 0.5, -1}}))
                .isZero();
    }

    /** exp(-t / 2 s) of 3 A at 100 V, from 0 to 40 s: 600 J. */
    @Test
    void a_decay_is_measured_as_its_integral() {
        MeasurementPass pass = new MeasurementPass();
        ReversePower power =
                pass.add(new ReversePower(Window.of(0, 40), pass.channel("voltage"), pass.channel("current")));
        Wave.run(pass, 0, 40, 1000, List.of(t -> -100, t -> -3 * Math.exp(-t / 2)));
        assertThat(power.result().value() * 40).isCloseTo(600, within(0.1));
    }

    private static double power(double[][] rows) {
        MeasurementPass pass = new MeasurementPass();
        Window window = Window.of(rows[0][0], rows[rows.length - 1][0]);
        ReversePower power = pass.add(new ReversePower(window, pass.channel("voltage"), pass.channel("current")));
        Wave.run(pass, rows);
        return power.result().value();
    }
}
