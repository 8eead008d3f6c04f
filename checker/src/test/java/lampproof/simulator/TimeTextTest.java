package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeTextTest {

    @ParameterizedTest
    @CsvSource({
        "5e-5, 50.0 us",
        "1e-4, 100 us",
        "1.0001e-6, 1.0001 us",
        "0.999996e-3, 1.00 ms",
        "20e-3, 20.0 ms",
        "123456e-9, 123.46 us",
        "1.5, 1.50 s",
        "1234, 1234 s",
        "3e-16, 0.000300 ps",
        "0, 0 s"
    })
    void simulatedTimesHaveThreeToFiveFiguresAndTheirUnit(double time, String text) {
        assertThat(TimeText.of(time)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"60.0, 60 s", "0.5, 0.5 s", "600, 600 s"})
    void wallTimesAreInSeconds(double time, String text) {
        assertThat(TimeText.seconds(time)).isEqualTo(text);
    }
}
