package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrefixTest {

    @ParameterizedTest
    @CsvSource({
        "1e-14, FEMTO",
        "2.2e-6, MICRO",
        "0.99999999999, NONE",
        "999, NONE",
        "1000, KILO",
        "-4.7e6, MEGA",
        "3e15, TERA",
    })
    void aPrefixLeavesOneToThreeDigits(double value, Prefix prefix) {
        assertThat(Prefix.of(value, "V")).isEqualTo(prefix);
    }

    @ParameterizedTest
    @CsvSource({"0.0005, %", "1234, degC", "1e-6, 1", "7200, s"})
    void someUnitsTakeNone(double value, String unit) {
        assertThat(Prefix.of(value, unit)).isEqualTo(Prefix.NONE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, Double.NaN, Double.NEGATIVE_INFINITY})
    void zeroAndWhatIsNotFiniteHaveNone(double value) {
        assertThat(Prefix.of(value, "V")).isEqualTo(Prefix.NONE);
    }
}
