package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lampproof.physics.DiodeModel.Point;
import org.junit.jupiter.api.Test;

class LedFitTest {

    /** 140 equal diodes of n = 2.2, IS = 1e-20 A and 4 Ohm at 25 degC, against the model of one of them. */
    @Test
    void the_curve_through_three_points_of_equal_diodes_is_that_of_all_of_them() {
        DiodeModel one = new DiodeModel(1e-20, 4, 2.2, 298.15);
        List<Point> points = List.of(point(one, 8e-3), point(one, 15e-3), point(one, 30e-3));
        LedCurve curve = LedCurve.through(points);
        assertThat(curve.isDiode()).isTrue();
        assertThat(curve.resistance()).isCloseTo(140 * 4, within(1e-6));
        assertThat(curve.voltage(20e-3)).isCloseTo(140 * one.voltage(20e-3), within(1e-6));
        assertThat(curve.dynamicResistance(20e-3)).isCloseTo(140 * one.dynamicResistance(20e-3), within(1e-6));
    }

    @Test
    void points_on_a_curve_that_bends_upwards_are_no_diodes() {
        assertThat(LedCurve.through(List.of(new Point(30, 0.1), new Point(31, 0.2), new Point(33, 0.3)))
                        .isDiode())
                .isFalse();
    }

    /** By hand: means 2 and 10/3, products 3, squares 2. */
    @Test
    void the_line_of_least_squares_has_the_slope_of_the_normal_equation() {
        KneeLine line = KneeLine.through(List.of(new Point(2, 1), new Point(3, 2), new Point(5, 3)));
        assertThat(line.resistance()).isCloseTo(1.5, within(1e-12));
        assertThat(line.knee()).isCloseTo(1.0 / 3, within(1e-12));
    }

    private static Point point(DiodeModel one, double current) {
        return new Point(140 * one.voltage(current), current);
    }
}
