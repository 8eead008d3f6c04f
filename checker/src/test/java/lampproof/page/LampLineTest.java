package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LampLineTest {

    @Test
    void aLampIsNamedByConverterLawLineAndString() {
        assertThat(LampLine.of(Runs.of(Runs.LINE_RANGE + Runs.STEP_UP).design()).replace('\u00a0', ' '))
                .isEqualTo("step-up, boundary; line 230 V (207 V to 253 V), 50 Hz; string 420 V, 16.7 mA");
    }

    @ParameterizedTest
    @CsvSource({
        "switch.voltage_rating, switch voltage",
        "inductor.saturation_current, inductor saturation current",
        "harmonics, harmonics"
    })
    void aRatingIsNamedInWords(String row, String words) {
        assertThat(PartWords.rating(row)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "4.7 uF, 4.7 \u00b5F",
        "12 us, 12 \u00b5s",
        "15 Ohm, 15 \u03a9",
        "at 135 deg brighter, at 135\u00b0 brighter",
        "81 degC, 81 \u00b0C",
        "64 dBuV, 64 dB\u00b5V",
        "a degree of use, a degree of use"
    })
    void unitsHaveTheirSigns(String text, String signed) {
        assertThat(UnitSigns.signed(text)).isEqualTo(signed);
    }
}
