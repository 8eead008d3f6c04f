package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PeakPointTest {

    private static final int POINTS = 20_000;

    private final MeasurementPass pass = new MeasurementPass();
    private final PeakPoint peak = pass.add(new PeakPoint(Window.of(0, POINTS), pass.channel("i")));

    /** Also on the last and the first point of a block, of which the next or the one before is in another. */
    @ParameterizedTest
    @ValueSource(ints = {1, 100, 8190, 8191, 8192, 8193, 19_999})
    void aSpikeOfOnePointStandsAlone(int place) {
        Wave.run(pass, 0, POINTS, POINTS, List.of(t -> Math.rint(t) == place ? -8 : 0));
        assertThat(peak.result().value()).isEqualTo(8);
        assertThat(peak.time()).isCloseTo(place, within(1e-9));
        assertThat(peak.alone()).isTrue();
        assertThat(peak.width()).isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 8190, 8191, 8192})
    void aPeakOfTwoPointsDoesNot(int place) {
        Wave.run(pass, 0, POINTS, POINTS, List.of(t -> Math.abs(t - place - 0.5) < 0.6 ? 8 : 0));
        assertThat(peak.result().value()).isEqualTo(8);
        assertThat(peak.alone()).isFalse();
    }

    @Test
    void theEndOfTheRecordDoesNotTell() {
        Wave.run(pass, 0, POINTS, POINTS, List.of(t -> Math.rint(t) == POINTS ? 8 : 0));
        assertThat(peak.result().value()).isEqualTo(8);
        assertThat(peak.alone()).isFalse();
    }
}
