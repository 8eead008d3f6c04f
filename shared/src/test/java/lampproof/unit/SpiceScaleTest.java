package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpiceScaleTest {

    @ParameterizedTest
    @CsvSource({"m, -3", "M, -3", "MEG, 6", "Meg, 6", "u, -6", "K, 3", "f, -15"})
    void letterCaseDoesNotCount(String letters, int exponent) {
        assertThat(SpiceScale.exponent(letters)).hasValue(exponent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "A", "x", "ms", "\u00b5"})
    void otherLettersAreNoScale(String letters) {
        assertThat(SpiceScale.exponent(letters)).isEmpty();
    }
}
