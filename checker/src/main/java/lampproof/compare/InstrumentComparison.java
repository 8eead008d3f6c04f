package lampproof.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.design.Line;
import lampproof.fault.UserFault;
import lampproof.measure.FundamentalFrequency;
import lampproof.measure.Gaps;
import lampproof.measure.LineWindow;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.PeriodRms;
import lampproof.measure.Sampling;
import lampproof.measure.Window;
import lampproof.physics.HarmonicSpectrum;
import lampproof.prediction.DeckKind;
import lampproof.prediction.HarmonicName;
import lampproof.prediction.Prediction;
import lampproof.prediction.Probe;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Waveforms;

/**
 * Judges the table of an instrument on a lamp against what is predicted for the mains deck.
 *
 * <p>Only figures with recorded probes are compared. The table of an instrument does not contain the energy of each part. It must be readable without gaps, have enough points in a line period and whole periods, be steady, and show
 * power flowing into the lamp.
 */
public final class InstrumentComparison {

    private static final DeckKind DECK = DeckKind.MAINS;
    private static final double OFF_NOMINAL = 0.1;
    private static final double STEADY = 0.05;

    private final List<Prediction> predictions;
    private final Driver driver;
    private final Waveforms table;
    private final Set<Probe> there;
    private final Sampling sampling;

    private InstrumentComparison(List<Prediction> predictions, Driver driver, Waveforms table, Set<Probe> there) {
        this.predictions = predictions;
        this.driver = driver;
        this.table = table;
        this.there = there;
        this.sampling = Sampling.of(table);
    }

    /**
     * The verdict on every figure of the mains deck that the table shows, within the tolerances of instruments.
     *
     * @param predictions what the figures should be
     * @param driver the driver that they are for
     * @param table the table, its signals named after the columns of the probes
     * @param there the probes of the table
     */
    public static DeckVerdict of(List<Prediction> predictions, Driver driver, Waveforms table, Set<Probe> there) {
        List<Prediction> widened =
                predictions.stream().map(InstrumentTolerance::of).toList();
        try {
            return new InstrumentComparison(widened, driver, table, there).verdict();
        } catch (UserFault fault) {
            return DeckVerdict.noVerdict(DECK, widened, TrustCheck.failed("readable", fault.getMessage()));
        }
    }

    private DeckVerdict verdict() {
        double frequency = frequency();
        Line line = driver.line();
        Driver onLine = driver.on(new Line(line.voltage(), frequency, line.resistance()));
        Window window = LineWindow.last(sampling.span(), frequency);
        ProbeMeasurements measurements = new ProbeMeasurements(window, onLine, sampling.interpolation());
        List<PendingValue> signs = power(measurements).stream().toList();
        Map<Probe, PeriodRms> steady = steadiness(measurements);
        Map<Prediction, PendingValue> pendingValues = pendingValues(measurements);
        ReadResult reading = measurements.pass().over(table);
        List<TrustCheck> checks = checks(reading, window, signs, steady);
        if (checks.stream().anyMatch(check -> !check.passed())) {
            return DeckVerdict.noVerdict(DECK, window.text(), predictions, checks);
        }
        List<Verdict> verdicts = DeckVerdict.settled(DECK, predictions).stream()
                .map(prediction -> verdict(prediction, pendingValues, measurements))
                .toList();
        List<Verdict> explained = DifferenceExplainer.explained(
                DECK, new ProbeMeasurements(window, onLine, sampling.interpolation()), there, table, verdicts);
        return new DeckVerdict(DECK, window.text(), checks, explained);
    }

    /** Measured on the voltage or the current; nominal if neither has a frequency [Hz]. */
    private double frequency() {
        double nominal = driver.line().frequency();
        return Stream.of(Probe.LINE_VOLTAGE, Probe.LINE_CURRENT)
                .filter(there::contains)
                .map(probe -> fit(probe, nominal))
                .filter(Measured::present)
                .map(Measured::value)
                .findFirst()
                .orElse(nominal);
    }

    private Measured fit(Probe probe, double nominal) {
        MeasurementPass pass = new MeasurementPass(sampling.interpolation());
        FundamentalFrequency fit = pass.add(new FundamentalFrequency(
                Window.of(sampling.span()),
                pass.channel(probe.column()),
                (1 - OFF_NOMINAL) * nominal,
                (1 + OFF_NOMINAL) * nominal));
        pass.over(table);
        return fit.result();
    }

    private Map<Prediction, PendingValue> pendingValues(ProbeMeasurements measurements) {
        Map<Prediction, PendingValue> pendingValues = new LinkedHashMap<>();
        for (Prediction prediction : DeckVerdict.settled(DECK, predictions)) {
            if (missing(prediction, measurements).isEmpty() && resolved(prediction, measurements)) {
                FigureTable.take(prediction.figure().name(), measurements)
                        .ifPresent(pending -> pendingValues.put(prediction, pending));
            }
        }
        return pendingValues;
    }

    private Verdict verdict(
            Prediction prediction, Map<Prediction, PendingValue> pendingValues, ProbeMeasurements measurements) {
        Optional<Probe> missing = missing(prediction, measurements);
        if (missing.isPresent()) {
            return Verdict.predictedOnly(
                    prediction, "the table has no column for " + missing.get().dotted());
        }
        return pendingValues.containsKey(prediction)
                ? Verdict.of(prediction, pendingValues.get(prediction).result())
                : Verdict.predictedOnly(prediction, "the table has too few points in a line period");
    }

    private Optional<Probe> missing(Prediction prediction, ProbeMeasurements measurements) {
        Function<ProbeMeasurements, Object> recipe =
                trial -> FigureTable.take(prediction.figure().name(), trial);
        return measurements.probesOf(recipe).stream()
                .filter(probe -> !there.contains(probe))
                .sorted()
                .findFirst();
    }

    /** A harmonic needs more than two points in its period. */
    private boolean resolved(Prediction prediction, ProbeMeasurements measurements) {
        String name = prediction.figure().name();
        String prefix = HarmonicName.PREFIX;
        int order = name.startsWith(prefix)
                ? Integer.parseInt(name.substring(prefix.length()))
                : name.equals("line.current.thd") ? HarmonicSpectrum.HIGHEST_ORDER : 1;
        return sampling.rate() > 2 * order * measurements.driver().line().frequency();
    }

    private Optional<PendingValue> power(ProbeMeasurements measurements) {
        Set<Probe> both = Set.of(Probe.LINE_VOLTAGE, Probe.LINE_CURRENT);
        return there.containsAll(both)
                ? Optional.of(measurements.add(new MeanProduct(
                        measurements.window(),
                        measurements.channel(Probe.LINE_VOLTAGE),
                        measurements.channel(Probe.LINE_CURRENT))))
                : Optional.empty();
    }

    /** Rms line voltage and current over each line period. */
    private Map<Probe, PeriodRms> steadiness(ProbeMeasurements measurements) {
        Map<Probe, PeriodRms> periods = new EnumMap<>(Probe.class);
        Stream.of(Probe.LINE_VOLTAGE, Probe.LINE_CURRENT)
                .filter(there::contains)
                .forEach(probe -> periods.put(
                        probe,
                        measurements.pass().add(new PeriodRms(measurements.window(), measurements.channel(probe)))));
        return periods;
    }

    private List<TrustCheck> checks(
            ReadResult reading, Window window, List<PendingValue> signs, Map<Probe, PeriodRms> steady) {
        List<TrustCheck> checks = new ArrayList<>();
        checks.add(DeckComparison.readable(reading));
        checks.add(gaps());
        checks.add(resolved());
        checks.add(TrustCheck.passed("periods", window.text()));
        checks.add(TrustCheck.passed("tolerances", InstrumentTolerance.TEXT));
        signs.forEach(power -> checks.add(sign(power.result())));
        steady.forEach((probe, periods) -> checks.add(steady(probe, periods)));
        return checks;
    }

    private TrustCheck resolved() {
        return TrustCheck.of(
                "resolved",
                sampling.follows(driver.line().frequency()),
                Math.round(sampling.rate() / driver.line().frequency()) + " points in a line period (at least 10)"
                        + (sampling.longest() > 0
                                ? ", none for up to " + Engineering.rounded(sampling.longest(), "s")
                                : ""));
    }

    private TrustCheck gaps() {
        Gaps gaps = sampling.gaps();
        return gaps.fault()
                .map(fault -> TrustCheck.failed("gaps", fault))
                .orElseGet(() -> TrustCheck.passed("gaps", gaps.remark().orElse("none that lampproof can identify")));
    }

    private static TrustCheck sign(Measured power) {
        boolean flows = power.present() && power.value() > 0;
        String text = power.present() ? Engineering.rounded(power.value(), "W") : power.note();
        return TrustCheck.of(
                "power",
                flows,
                flows
                        ? text + " flows into the lamp"
                        : "no power flows into the lamp (" + text + "): is a probe reversed? map it with *-1");
    }

    private static TrustCheck steady(Probe probe, PeriodRms periods) {
        Measured change = periods.result();
        if (!change.present()) {
            return TrustCheck.failed("settled", "not steady: " + change.note());
        }
        double[] rms = periods.levels();
        int odd = periods.farthest();
        boolean holds = change.value() <= STEADY;
        String text = probe.dotted().replace('.', ' ') + " rms " + Engineering.rounded(rms[odd], probe.unit())
                + " in line period " + (odd + 1) + ", " + Engineering.rounded(rms[rms.length - 1], probe.unit())
                + " in the last (limit " + PlainNumber.fixed(100 * STEADY, 0) + " %)";
        return TrustCheck.of("settled", holds, holds ? text : "not steady: " + text);
    }
}
