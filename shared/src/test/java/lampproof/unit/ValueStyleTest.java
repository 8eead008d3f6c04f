package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueStyleTest {

    @ParameterizedTest
    @CsvSource({
        "0.09276, A, 92.76 mA",
        "4.7e-5, A, 47.00 uA",
        "0.98591, 1, 0.9859",
        "87.4567, %, 87.46 %",
        "52310.4, h, 52 000 h",
        "105.33, degC, 105.3 degC",
    })
    void figuresHaveFourDigitsOrTheDecimalsOfTheirUnit(double value, String unit, String text) {
        assertThat(ValueStyle.FIGURES.text(value, unit)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"4.7e-5, A, 47.00 \u00b5A", "52310.4, h, 52 000 h", "85.3, degC, 85.30 degC", "30, deg, 30.00 deg"})
    void pagesHaveTheMicroSign(double value, String unit, String text) {
        assertThat(ValueStyle.PAGE.text(value, unit)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "4.704e-5, A, 47 uA",
        "0.98591, 1, 0.986",
        "87.4567, %, 87.5 %",
        "52310.4, h, 52 000 h",
        "65432.1, Hz, 65 432 Hz",
        "85.3, degC, 85 degC",
        "17, '', 17",
    })
    void sentencesHaveThreeDigitsAndThousandsApart(double value, String unit, String text) {
        assertThat(ValueStyle.SENTENCE.text(value, unit)).isEqualTo(text);
    }
}
