package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EngineeringTest {

    @ParameterizedTest
    @CsvSource({
        "5e-5, s, 50.0 \u00b5s",
        "0.0999, A, 99.9 mA",
        "999.6, V, 1.00 kV",
        "-0.00047, H, -470 \u00b5H",
        "0, V, 0 V",
        "3e-16, s, 0.000300 ps",
        "2.675, V, 2.68 V",
        "7200, s, 7200 s",
        "0.0005, %, 0.000500 %",
        "1234, degC, 1234 degC",
        "0.5, 1, 0.500",
    })
    void roundedValuesHaveThreeDigitsAndAPrefix(double value, String unit, String text) {
        assertThat(Engineering.rounded(value, unit)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0125, s, 12.5 ms",
        "0.012345678901234, s, 12.3456789012 ms",
        "2, s, 2 s",
        "1500, '', 1500",
    })
    void preciseValuesHaveNoIdleZeros(double value, String unit, String text) {
        assertThat(Engineering.precise(value, unit)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"5e-5, 50.0 us", "1.0001e-6, 1.0001 us", "0.999996e-3, 1.00 ms", "123456e-9, 123.46 us"})
    void digitsMayHaveALeastAndAGreatestCount(double value, String text) {
        assertThat(new Engineering(3, 5, true).text(value, "s")).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteHasNoUnit(double value) {
        assertThat(Engineering.rounded(value, "V")).isEqualTo("not finite");
    }

    @Test
    void aScaleServesOtherValues() {
        Scale scale = Engineering.digits(4).scale(0.09276, "A");
        assertThat(scale.scaledUnit()).isEqualTo("mA");
        assertThat(scale.number(-1.00005)).isEqualTo("-1000.05");
    }
}
