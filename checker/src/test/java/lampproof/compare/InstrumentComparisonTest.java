package lampproof.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import lampproof.design.Driver;
import lampproof.design.Line;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import lampproof.prediction.Prediction;
import lampproof.prediction.Probe;
import lampproof.prediction.Tolerance;
import lampproof.waveform.BlockSink;
import lampproof.waveform.BlockWriter;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;
import org.junit.jupiter.api.Test;

/** Voltage and current of a lamp of 10 W that draws a sine, as an instrument samples them: 3 line periods of 49.9 Hz. */
class InstrumentComparisonTest {

    private static final double LINE = 49.9;
    private static final double POWER = 10;
    private static final Set<Probe> BOTH = Set.of(Probe.LINE_VOLTAGE, Probe.LINE_CURRENT);

    private double gain = 1;
    private double decay;
    private int pointsPerPeriod = 400;
    private IntPredicate kept = row -> true;
    private double dip = 1;

    @Test
    void whatIsMappedIsComparedWithinTheTolerancesOfInstruments() {
        gain = 1.028;
        assertThat(verdict("line.power.mean", POWER).outcome()).isEqualTo(Outcome.AGREES);
        assertThat(verdict("line.current.rms", POWER / 230).outcome()).isEqualTo(Outcome.AGREES);
        gain = 1.032;
        assertThat(verdict("line.power.mean", POWER).outcome()).isEqualTo(Outcome.DIFFERS);
    }

    @Test
    void aToleranceThatIsWiderAlreadyStays() {
        gain = 1.05;
        Prediction own = prediction("line.power.mean", POWER);
        Prediction wide = own.within(Tolerance.share(0.06));
        assertThat(verdict(wide).outcome()).isEqualTo(Outcome.AGREES);
    }

    @Test
    void whatIsNotMappedIsNotSimulatedForThatReason() {
        assertThat(verdict("bus.voltage.peak", 320))
                .returns(Outcome.PREDICTED_ONLY, Verdict::outcome)
                .returns("the table has no column for bus.voltage", Verdict::reason);
    }

    @Test
    void aHarmonicThatTheSamplesCannotHoldIsNotCompared() {
        pointsPerPeriod = 40;
        assertThat(verdict("line.current.harmonic.39", 0).reason())
                .isEqualTo("the table has too few points in a line period");
        assertThat(verdict("line.current.harmonic.3", 0).outcome()).isEqualTo(Outcome.AGREES);
    }

    @Test
    void theTolerancesAreNamedAndThePeriodsAreThoseOfTheLineAsItIs() {
        DeckVerdict verdict = verdict(List.of(prediction("line.power.mean", POWER)));
        assertThat(verdict.trust()).allMatch(TrustCheck::passed);
        assertThat(verdict.trust()).anyMatch(check -> check.text().startsWith("instrument tolerances: 3 % for means"));
        assertThat(verdict.window()).endsWith(", 3 line periods");
    }

    @Test
    void aProbeTurnedRoundGivesNoVerdict() {
        gain = -1;
        assertThat(verdict("line.power.mean", POWER))
                .returns(Outcome.NO_VERDICT, Verdict::outcome)
                .returns(
                        "no power flows into the lamp (-10.0 W): is a probe reversed? map it with *-1",
                        Verdict::reason);
    }

    @Test
    void aLampThatIsNotYetSteadyGivesNoVerdict() {
        decay = 5;
        assertThat(verdict("line.power.mean", POWER).reason()).startsWith("not steady: line current rms ");
    }

    @Test
    void aDipBetweenSoundPeriodsGivesNoVerdict() {
        dip = 0.4;
        assertThat(verdict("line.power.mean", POWER).reason())
                .startsWith("not steady: line voltage rms 92.0 V in line period 2, 230 V in the last (limit 5 %)");
    }

    @Test
    void aHoleInTheRecordGivesNoVerdict() {
        kept = row -> row < 300 || row > 600;
        assertThat(verdict("line.power.mean", POWER).reason())
                .startsWith("no sample from 14.97")
                .endsWith(", step 50.1 µs elsewhere");
    }

    @Test
    void aTableOfTooFewPointsGivesNoVerdict() {
        pointsPerPeriod = 6;
        assertThat(verdict("line.power.mean", POWER))
                .returns(Outcome.NO_VERDICT, Verdict::outcome)
                .returns("6 points in a line period (at least 10)", Verdict::reason);
    }

    private Verdict verdict(String name, double predicted) {
        return verdict(prediction(name, predicted));
    }

    private Verdict verdict(Prediction prediction) {
        return verdict(List.of(prediction)).verdicts().get(0);
    }

    private DeckVerdict verdict(List<Prediction> predictions) {
        Driver driver = CrestTable.driver().on(new Line(230, 50, 0));
        return InstrumentComparison.of(predictions, driver, table(), BOTH);
    }

    private static Prediction prediction(String name, double value) {
        Figure figure = FigureCatalogue.figures().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        return new Prediction(
                figure,
                Corner.NOMINAL,
                Optional.of(DeckKind.MAINS),
                value,
                figure.grade().tolerance());
    }

    private Waveforms table() {
        DoubleUnaryOperator voltage =
                t -> (t > 1 / LINE && t < 2 / LINE ? dip : 1) * 230 * Math.sqrt(2) * Math.sin(2 * Math.PI * LINE * t);
        DoubleUnaryOperator current =
                t -> gain * Math.exp(-decay * t) * POWER / 230 * Math.sqrt(2) * Math.sin(2 * Math.PI * LINE * t);
        return new Waveforms() {
            @Override
            public Span span() {
                return new Span(0, 3 / LINE);
            }

            @Override
            public ReadResult rows(List<String> names, BlockSink sink) {
                BlockWriter writer = new BlockWriter(names.size(), sink);
                for (int row = 0; row <= 3 * pointsPerPeriod; row++) {
                    double time = row / LINE / pointsPerPeriod;
                    if (!kept.test(row)) {
                        continue;
                    }
                    writer.row(
                            time,
                            names.stream()
                                    .mapToDouble(
                                            name -> (name.contains("voltage") ? voltage : current).applyAsDouble(time))
                                    .toArray());
                }
                writer.end();
                String file = String.format(Locale.ROOT, "scope at %d points", pointsPerPeriod);
                return new ReadResult(file, 3L * pointsPerPeriod + 1, span(), List.of());
            }
        };
    }
}
