package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrefixTest {

    @ParameterizedTest
    @CsvSource({
        "1e-14, PICO",
        "2.2e-6, MICRO",
        "0.99999999999, NONE",
        "999, NONE",
        "1000, KILO",
        "-4.7e6, MEGA",
        "3e15, TERA",
    })
    void aPrefixLeavesOneToThreeDigits(double value, Prefix prefix) {
        assertThat(Prefix.of(value)).isEqualTo(prefix);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, Double.NaN, Double.NEGATIVE_INFINITY})
    void zeroAndWhatIsNotFiniteHaveNone(double value) {
        assertThat(Prefix.of(value)).isEqualTo(Prefix.NONE);
    }
}
