package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TimeToReachTest {

    @Test
    void aLevelBetweenTwoPointsIsReachedBetweenThem() {
        assertThat(time(3).value()).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void theFirstPassageCounts() {
        assertThat(time(6).value()).isCloseTo(2, within(1e-12));
        assertThat(time(0).value()).isZero();
    }

    @Test
    void aLevelThatIsNeverReachedLeavesNoTime() {
        assertThat(time(7).note()).isEqualTo("current never reaches 7.0");
    }

    /** A record from 1 s: 0, 2, 6 (an overshoot), 4, 6. */
    private static Measured time(double level) {
        MeasurementPass pass = new MeasurementPass();
        TimeToReach time = pass.add(new TimeToReach(Window.of(1, 5), pass.channel("current"), level));
        Wave.run(pass, new double[][] {{1, 0}, {2, 2}, {3, 6}, {4, 4}, {5, 6}});
        return time.result();
    }
}
