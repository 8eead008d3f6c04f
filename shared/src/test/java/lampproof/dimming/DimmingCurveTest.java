package lampproof.dimming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import lampproof.design.Dimming;
import lampproof.design.Dimming.Edge;
import lampproof.quasistatic.dimmed.DimmedStress;
import org.junit.jupiter.api.Test;

/** Curves that are drawn by hand: 1 A without a dimmer, a holding current of 30 mA. */
class DimmingCurveTest {

    private static final OffState DARK = new OffState(10, 0);

    @Test
    void a_straight_line_has_its_ends_where_the_light_passes_a_thousandth() {
        DimmingCurve curve = curve(angle -> Math.max(0, (angle - 30) / 150), angle -> Math.max(0, (angle - 60) / 120));
        assertThat(curve.dropOut().orElseThrow().degrees()).isEqualTo(30, within(1e-9));
        assertThat(curve.lowestLevel())
                .hasValueSatisfying(level -> assertThat(level).isEqualTo(5.0 / 150, within(1e-9)));
        assertThat(curve.popOn().orElseThrow().degrees()).isEqualTo(65, within(1e-9));
        assertThat(Math.toDegrees(curve.deadTravelBelow())).isEqualTo(65, within(1e-9));
        assertThat(curve.deadTravelAbove()).isZero();
        assertThat(curve.stepBack()).isEmpty();
        assertThat(curve.currentAt(107.5)).isEqualTo(77.5 / 150, within(1e-9));
    }

    @Test
    void a_flat_top_is_dead_travel() {
        DimmingCurve curve = curve(angle -> Math.min(1, angle / 140), angle -> 0);
        assertThat(Math.toDegrees(curve.deadTravelAbove())).isEqualTo(40, within(1e-9));
        assertThat(curve.popOn()).isEmpty();
        assertThat(curve.deadTravelBelow()).isEqualTo(Math.PI, within(1e-9));
    }

    @Test
    void a_lamp_that_grows_brighter_while_it_is_turned_down_steps_back() {
        DimmingCurve curve = curve(angle -> angle > 90 ? 0.3 : 0.5 * angle / 90, angle -> 0);
        assertThat(curve.stepBack().orElseThrow().degrees()).isEqualTo(90, within(1e-9));
    }

    @Test
    void a_lamp_whose_half_cycles_take_turns_flickers_where_they_differ_visibly() {
        assertThat(curve(angle -> angle / 180, angle -> 0).flickers())
                .extracting(DimmingPoint::degrees)
                .singleElement()
                .satisfies(angle -> assertThat(angle).isEqualTo(50, within(1e-9)));
    }

    @Test
    void a_triac_goes_out_where_its_least_current_is_below_the_holding_current() {
        DimmingCurve curve = curve(angle -> angle / 180, angle -> 0);
        assertThat(curve.misfires())
                .extracting(DimmingPoint::degrees)
                .allMatch(angle -> angle < 30 + 1e-9)
                .hasSize(5);
        DimmingPoint nearest = curve.nearestToMisfire().orElseThrow();
        assertThat(nearest.degrees()).isEqualTo(5, within(1e-9));
        assertThat(curve.misfireMargin(nearest)).isEqualTo(5e-3 - 30e-3, within(1e-9));
    }

    /** The least current of the triac is 1 mA for each degree. */
    private static DimmingCurve curve(DoubleUnaryOperator down, DoubleUnaryOperator up) {
        Dimming dimming = new Dimming(Edge.LEADING, Math.PI, 100e-9, 1e-3, 30e-3, 2700, 65, 45e-3);
        List<DimmingPoint> falling = new ArrayList<>(points(down));
        Collections.reverse(falling);
        List<DimmingPoint> rising = points(up);
        return new DimmingCurve(dimming, 1, falling, rising, turn(rising, true), turn(falling, false), DARK, DARK);
    }

    private static Optional<DimmingThreshold> turn(List<DimmingPoint> points, boolean lights) {
        return IntStream.range(1, points.size())
                .filter(k -> points.get(k).current() >= 1e-3 == lights)
                .mapToObj(k -> new DimmingThreshold(points.get(k - 1), points.get(k)))
                .findFirst();
    }

    private static List<DimmingPoint> points(DoubleUnaryOperator current) {
        return IntStream.rangeClosed(0, 36)
                .mapToObj(step -> new DimmingPoint(
                        Math.toRadians(5 * step),
                        new DimmedStress(0, 0, 0, 0, 0, 5e-3 * step, 0, 0, current.applyAsDouble(5 * step), 0),
                        step == 10 ? 0.02 : step == 11 ? 0.005 : 0))
                .toList();
    }
}
