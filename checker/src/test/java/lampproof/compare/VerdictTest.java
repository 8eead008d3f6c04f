package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lampproof.measure.Measured;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.FigureCatalogue;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;
import org.junit.jupiter.api.Test;

class VerdictTest {

    @Test
    void theLimitItselfStillAgrees() {
        Prediction hundred = prediction(100, new Tolerance(0.02, 0.5));
        assertThat(Verdict.of(hundred, Measured.of(102.5)).outcome()).isEqualTo(Outcome.AGREES);
        assertThat(Verdict.of(hundred, Measured.of(97.5)).outcome()).isEqualTo(Outcome.AGREES);
        assertThat(Verdict.of(hundred, Measured.of(102.51)).outcome()).isEqualTo(Outcome.DIFFERS);
        assertThat(Verdict.of(hundred, Measured.of(-100)).outcome()).isEqualTo(Outcome.DIFFERS);
    }

    /** 0.0021 V at a trough of a signal that spans 300 V, now 0.0029 V: a band of 1 % alone would be 38 % off. */
    @Test
    void aValueNearZeroIsJudgedByTheAbsoluteToleranceAndHasNoDeviation() {
        Verdict trough = Verdict.of(prediction(0.0021, new Tolerance(0.01, 0.03)), Measured.of(0.0029));
        assertThat(trough.outcome()).isEqualTo(Outcome.AGREES);
        assertThat(trough.deviation()).isEmpty();
    }

    @Test
    void aPredictionOfZeroIsNeverDividedBy() {
        Verdict zero = Verdict.of(prediction(0, Tolerance.share(0.02)), Measured.of(1));
        assertThat(zero.outcome()).isEqualTo(Outcome.DIFFERS);
        assertThat(zero.deviation()).isEmpty();
    }

    @Test
    void whatIsNotANumberNeverAgrees() {
        Verdict unpredicted = Verdict.of(prediction(Double.NaN, Tolerance.share(0.02)), Measured.of(1));
        assertThat(unpredicted.outcome()).isEqualTo(Outcome.DIFFERS);
        Verdict unmeasured = Verdict.of(prediction(1, Tolerance.share(0.02)), Measured.of(Double.NaN));
        assertThat(unmeasured.outcome()).isEqualTo(Outcome.NO_VERDICT);
        assertThat(unmeasured.reason()).isEqualTo("the figure is not finite");
    }

    @Test
    void theDeviationHasItsSignFromTheSimulation() {
        Verdict low = Verdict.of(prediction(-10, Tolerance.share(0.02)), Measured.of(-11));
        assertThat(low.deviation().orElseThrow()).isCloseTo(-10, within(1e-12));
    }

    @Test
    void theWorstOutcomeOfARunIsTheOneThatIsLeastKnown() {
        Prediction one = prediction(1, Tolerance.share(0.02));
        Verdict agrees = Verdict.of(one, Measured.of(1));
        Verdict differs = Verdict.of(one, Measured.of(2));
        Verdict none = Verdict.noVerdict(one, "too short");
        Verdict left = Verdict.predictedOnly(one, "left out");
        assertThat(worst(left)).isEqualTo(Outcome.PREDICTED_ONLY);
        assertThat(worst(left, agrees)).isEqualTo(Outcome.AGREES);
        assertThat(worst(agrees, differs, left)).isEqualTo(Outcome.DIFFERS);
        assertThat(worst(agrees, none, differs)).isEqualTo(Outcome.NO_VERDICT);
    }

    @Test
    void theFiguresOfOtherLineVoltagesAreToldButNotCounted() {
        Prediction nominal = prediction(100, null, Corner.NOMINAL);
        RunVerdict run = RunVerdict.of("run", List.of(nominal, prediction(90, null, Corner.LOW_LINE)), List.of());
        assertThat(run.count(Outcome.PREDICTED_ONLY)).isOne();
        assertThat(run.corners()).singleElement().satisfies(verdict -> {
            assertThat(verdict.prediction().value()).isEqualTo(90);
            assertThat(verdict.reason()).isEqualTo("decks have the typical line voltage");
        });
    }

    private static Prediction prediction(double value, DeckKind deck, Corner corner) {
        return new Prediction(
                FigureCatalogue.figures().get(0), corner, Optional.ofNullable(deck), value, new Tolerance(0.02, 0));
    }

    private static Outcome worst(Verdict... verdicts) {
        return new RunVerdict("run", List.of(), List.of(verdicts), List.of()).worst();
    }

    private static Prediction prediction(double value, Tolerance tolerance) {
        return new Prediction(
                FigureCatalogue.figures().get(0), Corner.NOMINAL, Optional.of(DeckKind.MAINS), value, tolerance);
    }
}
