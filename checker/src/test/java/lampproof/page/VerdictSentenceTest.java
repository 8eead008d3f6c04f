package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.Grade;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;
import org.junit.jupiter.api.Test;

class VerdictSentenceTest {

    @Test
    void theFigureNearestToItsLimitIsNamed() {
        VerdictSentence all = of(verdict("sense.loss", 10.1), verdict("switch.loss", 10.42));
        assertThat(all.agrees()).isTrue();
        assertThat(all.sentence())
                .isEqualTo("2 of 2 simulated figures agree; nearest to its limit: switch.loss of deck mains at 84 %.");
        assertThat(all.reasons()).isEmpty();
    }

    @Test
    void aFigureThatDiffersIsGivenWithItsReason() {
        VerdictSentence one = of(verdict("sense.loss", 10.1), verdict("switch.loss", 11));
        assertThat(one.sentence()).isEqualTo("1 of 2 simulated figures agree, 1 differs.");
        assertThat(one.reasons())
                .containsExactly(
                        "switch.loss of deck mains: predicted 10.00\u00a0W, simulated 11.00\u00a0W (+10.00\u00a0%); too hot");
    }

    @Test
    void aFailedCheckIsTheReasonForNoVerdict() {
        DeckVerdict deck = DeckVerdict.noVerdict(
                DeckKind.MAINS, List.of(prediction("switch.loss")), new TrustCheck("energy", false, "lost 4 W"));
        VerdictSentence none = VerdictSentence.of(new RunVerdict("lamp", List.of(deck), List.of(), List.of()));
        assertThat(none.sentence()).isEqualTo("0 of 1 simulated figures agree, 0 differ, 1 has no verdict.");
        assertThat(none.reasons()).containsExactly("deck mains: energy, lost 4 W");
    }

    @Test
    void aRunWithoutSimulationSaysSo() {
        assertThat(of().sentence()).isEqualTo("No figure was simulated.");
    }

    private static VerdictSentence of(Verdict... verdicts) {
        return VerdictSentence.of(
                new RunVerdict("lamp", List.of(), Stream.of(verdicts).toList(), List.of()));
    }

    /** A figure of 10 W that may differ by half a watt. */
    private static Verdict verdict(String name, double simulated) {
        boolean agrees = Math.abs(simulated - 10) <= 0.5;
        return new Verdict(
                prediction(name),
                OptionalDouble.of(simulated),
                agrees ? Outcome.AGREES : Outcome.DIFFERS,
                agrees ? "" : "too hot");
    }

    private static Prediction prediction(String name) {
        Figure figure = new Figure(name, "P", "W", Grade.LOSS, "a loss", "P", "a test");
        return new Prediction(figure, Corner.NOMINAL, Optional.of(DeckKind.MAINS), 10, new Tolerance(0.05, 0));
    }
}
