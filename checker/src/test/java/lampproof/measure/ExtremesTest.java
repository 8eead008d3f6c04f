package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExtremesTest {

    @Test
    void theLargerMagnitudeCountsWhateverItsSign() {
        Extremes extremes = extremes(t -> 5 - 7 * t / 0.1);
        assertThat(extremes.result().value()).isEqualTo(5);
        assertThat(extremes.swing()).isCloseTo(7, within(1e-12));
        assertThat(extremes(t -> 2 - 7 * t / 0.1).result().value()).isCloseTo(5, within(1e-12));
    }

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
    void aCurrentThatRestsHalfOfTheTimeIsNotCutOff() {
        assertThat(clipped(t -> Math.max(0, sine(t, 325)), true)).isZero();
        assertThat(clipped(t -> Math.min(0, sine(t, 325)), true)).isZero();
    }

    @Test
    void darknessBetweenPulsesIsNotCutOff() {
        assertThat(clipped(t -> Math.max(0, sine(t, 1)), false)).isZero();
    }

    private static double sine(double time, double amplitude) {
        return amplitude * Math.sin(2 * Math.PI * 50 * time + 0.1);
    }

    private static double clipped(DoubleUnaryOperator wave, boolean bothEnds) {
        Extremes extremes = extremes(wave);
        return bothEnds ? extremes.clipped() : extremes.clippedAbove();
    }

    private static Extremes extremes(DoubleUnaryOperator wave) {
        MeasurementPass pass = new MeasurementPass();
        Extremes extremes = pass.add(new Extremes(Window.of(0, 0.1), pass.channel("v")));
        Wave.run(pass, 0, 0.1, 20_000, List.of(wave));
        extremes.result();
        return extremes;
    }
}
