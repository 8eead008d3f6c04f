package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PeriodRmsTest {

    private final MeasurementPass pass = new MeasurementPass();
    private final PeriodRms rms = pass.add(new PeriodRms(new Window(0, 3, 3, "period"), pass.channel("v")));

    /** By hand: the rms of a straight line from a to b is the root of (a^2 + ab + b^2)/3. */
    @Test
    void aPieceOverSeveralPeriodsCountsInEachOfThem() {
        Wave.run(pass, new double[][] {{0, 0}, {3, 3}});
        assertThat(rms.result().value()).isCloseTo(1 - Math.sqrt(1.0 / 19), within(1e-12));
        assertThat(rms.levels())
                .containsExactly(
                        new double[] {Math.sqrt(1.0 / 3), Math.sqrt(7.0 / 3), Math.sqrt(19.0 / 3)}, within(1e-12));
        assertThat(rms.farthest()).isZero();
    }

    @Test
    void pointsOnTheEndsOfPeriodsChangeNothing() {
        Wave.run(pass, 0, 3, 30_000, List.of(t -> t));
        assertThat(rms.result().value()).isCloseTo(1 - Math.sqrt(1.0 / 19), within(1e-9));
        assertThat(rms.levels()).hasSize(3);
    }
}
