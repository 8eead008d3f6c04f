package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/** The constants are from memory; the nominal times of the standards, which they must reproduce, are not. */
class SurgeTest {

    private static final double MICRO = 1e-6;

    /** IEEE C62.41.2-2002: 100 kHz, rise of 0.5 us from 10 to 90 %, each extreme 60 % of the one before. */
    @Test
    void ring_wave_has_its_nominal_rise_and_decay() {
        assertThat(extreme(SurgeTest::ring, 0, 2 * MICRO, 1)).isCloseTo(1.000, within(2e-3));
        assertThat(crossing(SurgeTest::ring, 0.9, 0, 0.8 * MICRO) - crossing(SurgeTest::ring, 0.1, 0, 0.8 * MICRO))
                .isCloseTo(0.5 * MICRO, within(0.005 * MICRO));
        double second = extreme(SurgeTest::ring, 3 * MICRO, 7 * MICRO, -1);
        double third = extreme(SurgeTest::ring, 8 * MICRO, 12 * MICRO, 1);
        double fourth = extreme(SurgeTest::ring, 13 * MICRO, 17 * MICRO, -1);
        assertThat(second).isCloseTo(0.967, within(2e-3));
        assertThat(third / second).isCloseTo(0.600, within(1e-3));
        assertThat(fourth / third).isCloseTo(0.600, within(1e-3));
    }

    private static double ring(double time) {
        return RingWave.voltage(1, time);
    }

    private static double crossing(DoubleUnaryOperator wave, double level, double from, double to) {
        return new BrentSolver(1e-12).solve(200, time -> wave.applyAsDouble(time) - level, from, to);
    }

    private static double extreme(DoubleUnaryOperator wave, double from, double to, int sign) {
        double largest = 0;
        int steps = 20_000;
        for (int i = 0; i <= steps; i++) {
            largest = Math.max(largest, sign * wave.applyAsDouble(from + (to - from) * i / steps));
        }
        return largest;
    }
}
