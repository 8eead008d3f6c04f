package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import lampproof.prediction.Prediction;
import lampproof.prediction.Probe;
import lampproof.prediction.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeckComparisonTest {

    /** What the triangle of {@link CrestTable} gives, worked out by hand. */
    private static final Map<String, Double> BY_HAND = Map.ofEntries(
            Map.entry("inductor.current.peak", 1.0),
            Map.entry("inductor.current.rms", 1 / Math.sqrt(3)),
            Map.entry("inductor.current.ripple", 1.0),
            Map.entry("inductor.loss.copper", 2.0 / 3),
            Map.entry("switch.current.peak", 1.0),
            Map.entry("switch.current.rms", 1 / Math.sqrt(6)),
            Map.entry("switch.current.mean", 0.25),
            Map.entry("switch.voltage.peak", 200.0),
            Map.entry("switch.loss", 0.0),
            Map.entry("switch.loss.conduction", 0.5),
            Map.entry("diode.current.peak", 1.0),
            Map.entry("diode.current.mean", 0.25),
            Map.entry("diode.current.rms", 1 / Math.sqrt(6)),
            Map.entry("diode.voltage.peak", 200.0),
            Map.entry("switching.on_time", 10e-6),
            Map.entry("switching.frequency.crest", 50e3));

    @TempDir
    private Path folder;

    private final CrestTable table = new CrestTable();

    @Test
    void everyFigureOfACrestTableIsTheOneWorkedOutByHand() {
        DeckVerdict verdict = verdict();
        assertThat(verdict.verdicts()).hasSameSizeAs(BY_HAND.entrySet()).allSatisfy(each -> {
            double expected = each.prediction().value();
            assertThat(each.simulated().orElseThrow()).isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
            assertThat(each.outcome()).isEqualTo(Outcome.AGREES);
        });
    }

    @Test
    void aSoundTableIsTrusted() {
        assertThat(verdict().trust())
                .containsExactly(
                        TrustCheck.passed("complete", "the record reaches 600 µs"),
                        TrustCheck.passed("readable", "1260 rows, every number finite, time never backwards"),
                        TrustCheck.passed("periods", "180 µs to 580 µs, 20 switching periods"),
                        TrustCheck.passed(
                                "resolved",
                                "40 steps in a switching cycle (at least 20), 20 of them in the on-time of 10.0 µs "
                                        + "(at least 10); with every second point omitted line.power.mean moves by "
                                        + "0.00 % (limit 2.00 %) at most"),
                        TrustCheck.passed(
                                "settled",
                                "output.voltage mean 200 V in the first half, 200 V in the second (0.00 %, limit 1.00 %)"),
                        TrustCheck.passed(
                                "energy", "0.00 % of the 50.0 W from the line is not accounted for (limit 2.00 %)"));
    }

    @Test
    void aFigureOutsideItsToleranceDiffers() {
        Prediction wrong = prediction("inductor.current.peak", 1.05);
        Verdict verdict = verdict(List.of(wrong)).verdicts().get(0);
        assertThat(verdict.outcome()).isEqualTo(Outcome.DIFFERS);
        assertThat(verdict.deviation().orElseThrow()).isCloseTo(-100 * 0.05 / 1.05, within(1e-9));
    }

    /** Straight lines 0.5 us long go up by 100 V and down again: nine tenths of both lie above 1.05 times 200 V. */
    @Test
    void aSpikeOnThePlateauIsToldRawAndWithItsWidth() {
        table.nodeSpike = 100;
        Verdict verdict = verdict(List.of(prediction("switch.voltage.peak", 200)))
                .verdicts()
                .get(0);
        assertThat(verdict.simulated().orElseThrow()).isCloseTo(300, within(1e-9));
        assertThat(verdict.reason())
                .startsWith("above 210 V for 900 ns, peak on a single point: step too coarse to know");
    }

    @Test
    void aRecordCutShortGivesNoVerdict() {
        DeckVerdict verdict =
                DeckComparison.of(DeckKind.CREST, byHand(), CrestTable.driver(), table.file(folder), 1.2e-3);
        assertRefused(verdict, "incomplete: the record ends at 600 µs of 1.20 ms (50.0 %)");
    }

    @Test
    void aRecordThatLacksItsLastStepIsNotToldAsAHundredPerCent() {
        DeckVerdict verdict = DeckComparison.of(
                DeckKind.CREST, byHand(), CrestTable.driver(), table.file(folder), table.stopTime() * 1.0001);
        assertRefused(verdict, "incomplete: the record ends at 600 µs of 600 µs (99.9 %)");
    }

    @Test
    void timesThatAreMicrosecondsUnderAPlainTitleDoNotFitTheDeck() {
        table.timeFactor = 1e6;
        assertRefused(
                verdict(),
                "the record ends at 600 s, the deck at 600 µs: of another deck, shifted, or its times in another unit?");
    }

    @Test
    void aRecordThatIsShiftedPastTheStopTimeGivesNoVerdict() {
        table.timeOffset = 1e-3;
        assertRefused(
                verdict(),
                "the record ends at 1.60 ms, the deck at 600 µs: of another deck, shifted, or its times in another unit?");
    }

    @Test
    void tooFewSwitchingPeriodsGiveNoVerdict() {
        table.cycles = 6;
        assertRefused(verdict(), "the record holds 4 whole switching periods, at least 10 are needed");
    }

    @Test
    void energyFromNowhereGivesNoVerdict() {
        table.diodeGain = 1.5;
        assertRefused(
                verdict(),
                "energy does not close: -50.00 % of the 50.0 W from the line is not accounted for (limit 2.00 %)");
    }

    @Test
    void aLineProbeTurnedRoundGivesNoVerdict() {
        table.lineGain = -1;
        assertRefused(verdict(), "no power flows in from the line (-50.0 W): is a probe reversed?");
    }

    /** At the crest the books of energy close without the string. */
    @Test
    void aStringProbeTurnedRoundGivesNoVerdict() {
        table.turned = Set.of(Probe.STRING_CURRENT);
        assertRefused(
                verdict(),
                "string.current is -250 mA in the mean, but positive in every lit lamp: is a probe reversed?");
    }

    /** Two probes of one part turned round leave its power as it is. */
    @ParameterizedTest
    @CsvSource({"OUTPUT_VOLTAGE,DIODE_CURRENT", "INDUCTOR_VOLTAGE,INDUCTOR_CURRENT", "SWITCH_VOLTAGE,SWITCH_CURRENT"})
    void bothProbesOfAPartTurnedRoundGiveNoVerdict(Probe one, Probe other) {
        table.turned = Set.of(one, other);
        assertThat(verdict().verdicts())
                .extracting(Verdict::reason)
                .allMatch(reason -> reason.endsWith("is a probe reversed?"));
    }

    @Test
    void aStepThatIsTooCoarseGivesNoVerdict() {
        table.steps = 4;
        assertRefused(
                verdict(),
                "too coarse: 8 steps in a switching cycle (at least 20), 4 of them in the on-time of 10.0 µs "
                        + "(at least 10)");
    }

    /** By hand: of the last 20 periods one lasts 40 us. */
    @Test
    void aSwitchingCycleWhoseRowsAreMissingGivesNoVerdict() {
        table.missing = 20;
        assertRefused(
                verdict(),
                "too coarse: a step of 20.0 µs, a switching cycle lasts 21.0 µs (at most a quarter): are rows missing?");
    }

    /** By hand: 19 turns in each of 20 cycles, among 841 steps, the vertical edges counted. */
    @Test
    void aCurrentThatTurnsBackAtEveryPointGivesNoVerdict() {
        table.ringing = 0.2;
        assertRefused(
                verdict(),
                "numerical ringing: switch.current alternates from point to point in 45.18 % of the record (limit 1.00 %): "
                        + "integrate with method=gear");
    }

    @Test
    void aFigureThatHangsOnEverySecondPointGivesNoVerdict() {
        table.spikes = 0.5;
        assertRefused(
                verdict(),
                "too coarse: with every second point omitted switch.current.rms moves by 17.31 % (limit 2.00 %)");
    }

    @Test
    void aDriftingOutputGivesNoVerdict() {
        table.outputDrift = 0.06;
        assertRefused(
                verdict(),
                "not settled: output.voltage mean 206 V in the first half, 210 V in the second (1.91 %, limit 1.00 %): "
                        + "the run leaves the predicted steady state, so circuit and prediction differ; a later stop "
                        + "time in .tran lets it settle and gives a verdict on each figure");
    }

    @Test
    void aNumberThatIsNoneGivesNoVerdict() {
        table.lastCell = "nan";
        assertRefused(
                verdict(),
                "crest.csv, line 1261: column 'gate_voltage' is not finite (nan); look into the simulator's log");
    }

    @Test
    void aFailedSimulationGivesNoVerdictOnAnyOfItsFigures() {
        assertRefused(
                DeckVerdict.failed(DeckKind.CREST, byHand(), "the simulator was stopped"), "the simulator was stopped");
    }

    private static void assertRefused(DeckVerdict verdict, String reason) {
        assertThat(verdict.verdicts()).hasSameSizeAs(BY_HAND.entrySet());
        assertThat(verdict.verdicts()).extracting(Verdict::reason).containsOnly(reason);
        assertThat(verdict.verdicts()).extracting(Verdict::outcome).containsOnly(Outcome.NO_VERDICT);
        assertThat(verdict.verdicts()).extracting(Verdict::simulated).containsOnly(OptionalDouble.empty());
    }

    private DeckVerdict verdict() {
        return verdict(byHand());
    }

    private DeckVerdict verdict(List<Prediction> predictions) {
        return DeckComparison.of(
                DeckKind.CREST, predictions, CrestTable.driver(), table.file(folder), table.stopTime());
    }

    private static List<Prediction> byHand() {
        return BY_HAND.entrySet().stream()
                .map(entry -> prediction(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Prediction prediction(String name, double value) {
        return new Prediction(
                figure(name), Corner.NOMINAL, Optional.of(DeckKind.CREST), value, new Tolerance(0.04, 1e-9));
    }

    private static Figure figure(String name) {
        Stream<Figure> figures = FigureCatalogue.figures().stream();
        return figures.filter(figure -> figure.name().equals(name)).findFirst().orElseThrow();
    }
}
