package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lampproof.compare.Outcome;
import lampproof.compare.Verdict;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.Grade;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnTextTest {

    @ParameterizedTest
    @CsvSource({
        "47423.8, h, 47_thousand_h",
        "81.0099, degC, 81_\u00b0C",
        "-6.637, dB, \u22126.6_dB",
        "69.83, dBuV, 69.8_dB\u00b5V",
        "0.0925566, A, 92.56_mA",
        "11.25, deg, 11.25\u00b0",
        "0.985452, 1, 0.9855"
    })
    void aValueHasNoMoreDigitsThanAreKnown(double value, String unit, String text) {
        assertThat(ColumnText.text(value, unit)).isEqualTo(text.replace('_', '\u00a0'));
    }

    /** Decibels are a ratio already. */
    @Test
    void aDeviationInDecibelsIsADifference() {
        assertThat(ColumnText.deviation(verdict("dBuV", 80, 78.5))).isEqualTo("\u22121.50\u00a0dB");
        assertThat(ColumnText.deviation(verdict("W", 80, 78.4))).isEqualTo("\u22122.00\u00a0%");
    }

    @Test
    void withoutASimulatedValueThereIsNoDeviation() {
        Verdict one = verdict("dB", 3, 4);
        Verdict none = new Verdict(one.prediction(), OptionalDouble.empty(), Outcome.NO_VERDICT, "");
        assertThat(ColumnText.deviation(none)).isEmpty();
    }

    private static Verdict verdict(String unit, double predicted, double simulated) {
        Figure figure = new Figure("a.b", "x", unit, Grade.LOSS, "a figure", "x", "a test");
        Prediction prediction =
                new Prediction(figure, Corner.NOMINAL, Optional.of(DeckKind.MAINS), predicted, new Tolerance(0.05, 0));
        return new Verdict(prediction, OptionalDouble.of(simulated), Outcome.AGREES, "");
    }
}
