package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PeakWhileClosedTest {

    @Test
    void aPeakIsTakenWhereTheGateCrosses() {
        assertThat(peak(0, 4).value()).isCloseTo(7, within(1e-12));
    }

    @Test
    void aGateThatNeverClosesLeavesNoPeak() {
        assertThat(peak(100, 4).present()).isFalse();
    }

    /** A gate that closes half-way from 1 s to 2 s, while the channel falls from 8 through 7 to 6. */
    private static Measured peak(double threshold, double end) {
        MeasurementPass pass = new MeasurementPass();
        Gate gate = new Gate(pass.channel("gate"), threshold);
        PeakWhileClosed peak = pass.add(new PeakWhileClosed(Window.of(0, end), pass.channel("current"), gate));
        Wave.run(pass, new double[][] {{0, -1, 9}, {1, -1, 8}, {2, 1, 6}, {3, 1, 5}, {4, 1, 4}});
        return peak.result();
    }
}
