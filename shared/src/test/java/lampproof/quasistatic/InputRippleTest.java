package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lampproof.physics.SoftRecovery;
import org.junit.jupiter.api.Test;

/** Harmonics of the input current against Fourier series of textbooks. */
class InputRippleTest {

    private static final double PERIOD = 10e-6;

    private static CellCycle cycle(Ramp on, Ramp diode) {
        double rest = PERIOD - on.time() - diode.time();
        return new CellCycle(on, NodeRise.NONE, on.to(), diode, new IdleRing(rest, 0, 0, 0, 0), SoftRecovery.NONE);
    }

    /** Square wave of height 1: harmonics of amplitude 2 / (pi n), none of even order. */
    @Test
    void aPulseOfHalfThePeriodHasOddHarmonics() {
        CellCycle square = cycle(new Ramp(1, 1, PERIOD / 2, 0), Ramp.NONE);
        assertThat(InputCurrent.withoutNode(square, false).meanSquare(1))
                .isCloseTo(2 / (Math.PI * Math.PI), within(1e-12));
        assertThat(InputCurrent.withoutNode(square, false).meanSquare(2)).isCloseTo(0, within(1e-12));
        assertThat(InputCurrent.withoutNode(square, false).meanSquare(3))
                .isCloseTo(2 / (9 * Math.PI * Math.PI), within(1e-12));
    }

    /** Triangle of swing 1: harmonics of amplitude 4 / (pi n)^2, none of even order. */
    @Test
    void aTriangleHasOddHarmonicsThatFallWithTheSquareOfTheirOrder() {
        CellCycle triangle = cycle(new Ramp(0, 1, PERIOD / 2, 0), new Ramp(1, 0, PERIOD / 2, 0));
        assertThat(InputCurrent.withoutNode(triangle, true).meanSquare(1))
                .isCloseTo(8 / Math.pow(Math.PI, 4), within(1e-12));
        assertThat(InputCurrent.withoutNode(triangle, true).meanSquare(2)).isCloseTo(0, within(1e-12));
        assertThat(InputCurrent.withoutNode(triangle, true).meanSquare(3))
                .isCloseTo(8 / Math.pow(3 * Math.PI, 4), within(1e-12));
    }
}
