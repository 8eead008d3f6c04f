package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.Grade;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;
import lampproof.quasistatic.Condition;
import org.junit.jupiter.api.Test;

/** The sentence of an explanation, with substitutions whose shifts are told and add up. */
class ExplanationTest {

    private static final Substitution OUTPUT = new Substitution(Condition.OUTPUT_VOLTAGE, 421, 433.5);
    private static final Substitution BUS = new Substitution(Condition.BUS_VOLTAGE, 322.4, 321);
    private static final Substitution ON_TIME = new Substitution(Condition.ON_TIME, 3.457e-6, 1.741e-6);
    private static final Substitution COIL = new Substitution(Condition.INDUCTANCE, 12e-3, 24e-3);

    @Test
    void theSubstitutionThatClosesMostComesFirstAndEachHasItsShare() {
        assertThat(explanation(106.1, Map.of(BUS, 0.9, OUTPUT, 5.0)))
                .isEqualTo(
                        "5.0 of the 6.1 % comes from the output voltage at the crest: "
                                + "predicted 421.0 V, simulated 433.5 V; "
                                + "0.9 of the 6.1 % comes from the bus voltage at the crest: predicted 322.4 V, simulated 321.0 V");
    }

    @Test
    void aGapBelowThePredictionIsToldWithoutASign() {
        assertThat(explanation(51.1, Map.of(COIL, -49.4, BUS, 0.1)))
                .isEqualTo("all of the 48.9 % comes from the inductor: in the circuit 24.00 mH, "
                        + "the prediction used 12.00 mH");
    }

    @Test
    void whatIsLeftIsSaid() {
        assertThat(explanation(110, Map.of(OUTPUT, 4.0)))
                .isEqualTo("4.0 of the 10.0 % comes from the output voltage at the crest: "
                        + "predicted 421.0 V, simulated 433.5 V; 6.0 % is not explained");
    }

    @Test
    void aSubstitutionMayTakeBackWhatAnotherGaveTooMuch() {
        assertThat(explanation(110, Map.of(ON_TIME, 13.0, OUTPUT, -3.0)))
                .isEqualTo(
                        "13.0 of the 10.0 % comes from the on-time: predicted 3.457 µs, simulated 1.741 µs; "
                                + "3.0 % is compensated by the output voltage at the crest: predicted 421.0 V, simulated 433.5 V");
    }

    @Test
    void whenNothingExplainsItEverythingThatWasTriedIsNamed() {
        assertThat(explanation(110, Map.of(BUS, 0.2)))
                .isEqualTo("none of bus voltage at the crest explains it; "
                        + "another value in the circuit may differ from the spec");
        assertThat(explanation(110, Map.of())).isEqualTo("no measured condition explains it");
    }

    @Test
    void aFigureDoesNotExplainItself() {
        assertThat(explanation("switching.on_time", 50, Map.of(ON_TIME, -50.0)))
                .isEqualTo("no measured condition explains it");
    }

    @Test
    void aDriverThatDoesNotSettleExplainsNothing() {
        assertThat(explanation(110, Map.of(OUTPUT, Double.NaN))).startsWith("none of output voltage at the crest");
    }

    private static String explanation(double simulated, Map<Substitution, Double> shifts) {
        return explanation("inductor.current.peak", simulated, shifts);
    }

    private static String explanation(String name, double simulated, Map<Substitution, Double> shifts) {
        Figure figure = new Figure(name, "x", "A", Grade.PEAK, "", "", "");
        Prediction prediction =
                new Prediction(figure, Corner.NOMINAL, Optional.of(DeckKind.CREST), 100, Tolerance.share(0.04));
        Alternatives alternatives =
                (ignored, taken) -> taken.stream().mapToDouble(shifts::get).sum();
        return Explanation.of(alternatives, List.copyOf(shifts.keySet()), prediction, simulated);
    }
}
