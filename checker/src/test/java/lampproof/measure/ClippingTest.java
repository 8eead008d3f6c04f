package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClippingTest {

    /** A sine of 325 lies beyond 250 for arccos(250/325)/pi of its period at each end. */
    @Test
    void aSineThatIsCutOffStandsAtItsEndsForTheTimeWorkedOutByHand() {
        double share = 2 * Math.acos(250.0 / 325) / Math.PI;
        assertThat(clipped(t -> Math.max(-250, Math.min(250, sine(t, 325))), true))
                .isCloseTo(share, within(2e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.1, 2.6, 10, 40})
    void aSineInLevelsIsNotCutOff(double level) {
        assertThat(clipped(t -> Math.rint(sine(t, 325) / level) * level, true)).isZero();
        assertThat(clipped(t -> Math.floor(sine(t, 325) / level) * level, true)).isZero();
    }

    @Test
    void aRectangleIsNotCutOff() {
        assertThat(clipped(t -> Math.signum(sine(t, 1)), true)).isZero();
        assertThat(clipped(t -> sine(t, 1) > 0.5 ? 1 : 0, false)).isZero();
        assertThat(clipped(t -> 3, false)).isZero();
    }

    @Test
    void darknessBetweenPulsesIsNotCutOff() {
        assertThat(clipped(t -> Math.max(0, sine(t, 1)), false)).isZero();
    }

    private static double sine(double time, double amplitude) {
        return amplitude * Math.sin(2 * Math.PI * 50 * time + 0.1);
    }

    private static double clipped(DoubleUnaryOperator wave, boolean bothEnds) {
        MeasuringPass pass = new MeasuringPass();
        Clipping clipping = pass.add(new Clipping(Window.of(0, 0.1), pass.channel("v"), bothEnds));
        Wave.run(pass, 0, 0.1, 20_000, List.of(wave));
        return clipping.result().value();
    }
}
