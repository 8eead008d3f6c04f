package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class PointAlternationTest {

    private final MeasurementPass pass = new MeasurementPass();
    private final Channel channel = pass.channel("i");

    /** By hand: of 100 steps the first three turn fewer than three times. */
    @Test
    void turningBackAtEveryPointIsZigzag() {
        assertThat(alternation(n -> n % 2)).isCloseTo(0.97, within(1e-12));
    }

    @Test
    void anOscillationOfSixPointsIsNone() {
        assertThat(alternation(n -> Math.sin(2 * Math.PI * n / 6))).isZero();
    }

    @Test
    void theRoundingOfASolverIsNone() {
        assertThat(alternation(n -> n + 1e-4 * (n % 2))).isZero();
    }

    @Test
    void aLoneSpikeIsNone() {
        assertThat(alternation(n -> n == 50 ? 1 : 0)).isZero();
    }

    private double alternation(IntToDoubleFunction values) {
        Measurement alternation = pass.add(new PointAlternation(Window.of(0, 100), channel));
        Wave.run(pass, 0, 100, 100, List.of(n -> values.applyAsDouble((int) n)));
        return alternation.result().value();
    }
}
