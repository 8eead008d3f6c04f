package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lampproof.measure.Measured;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;
import org.junit.jupiter.api.Test;

class SettingVerdictTest {

    @Test
    void anAngleIsToldAsItWasGiven() {
        assertThat(SettingVerdict.text(90)).isEqualTo("90");
        assertThat(SettingVerdict.text(12.5)).isEqualTo("12.5");
    }

    @Test
    void aFigureHasTheValueThatWasSimulatedOrNone() {
        Figure figure = FigureCatalogue.figures().get(0);
        Prediction prediction =
                new Prediction(figure, Corner.NOMINAL, Optional.of(DeckKind.DIMMED), 0.1, Tolerance.share(0.02));
        Verdict verdict = Verdict.of(prediction, Measured.of(0.099));
        DeckVerdict deck = new DeckVerdict(DeckKind.DIMMED, "20 ms", List.of(), List.of(verdict));
        SettingVerdict setting =
                new SettingVerdict(90, new RunVerdict("angle-90", List.of(deck), List.of(), List.of()));
        assertThat(setting.simulated(figure.name())).hasValue(0.099);
        assertThat(setting.simulated("no.such.figure")).isEmpty();
    }
}
