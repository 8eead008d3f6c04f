package lampproof.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NetlistNumberTest {

    @ParameterizedTest
    @CsvSource({
        "2.2e-6, 2.2e-6",
        "0.00047, 470e-6",
        "325.2691193045, 325.2691193",
        "1e6, 1e6",
        "4.7e-18, 4.7e-18",
        "100, 100",
        "999.99999999999, 1e3",
        "-0.5, -500e-3",
        "0, 0"
    })
    void numbersAreDigitsAndAnExponentThatIsAMultipleOfThree(double value, String text) {
        assertThat(NetlistNumber.text(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.234567890123e-9, 4.2e7, 65e3, 1 / 3.0, 2.2e-6})
    void theTextReadsBackToTenDigits(double value) {
        assertThat(Double.parseDouble(NetlistNumber.text(value)) / value - 1).isBetween(-1e-9, 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteIsRefused(double value) {
        assertThatThrownBy(() -> NetlistNumber.text(value))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("a netlist contains only finite numbers");
    }

    @Test
    void theLanguageOfTheMachineDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(NetlistNumber.text(1.5e3)).isEqualTo("1.5e3");
        } finally {
            Locale.setDefault(before);
        }
    }
}
