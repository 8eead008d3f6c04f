package lampproof.compare;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.fault.UserFault;
import lampproof.measure.LastPeriods;
import lampproof.measure.LineWindow;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Probe;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Remark;
import lampproof.waveform.Span;
import lampproof.waveform.file.WaveformFile;

/** Judges the table of one deck: first whether it can be trusted, then each figure. */
public final class DeckComparison {

    private static final int CREST_PERIODS = 20;
    private static final int CREST_PERIODS_AT_LEAST = 10;

    /** A simulator ends on the stop time; the table may round it by this share [-]. */
    private static final double OVERSHOOT = 1e-4;

    private final DeckKind deck;
    private final List<Prediction> predictions;
    private final Driver driver;
    private final WaveformFile table;
    private final double stopTime;

    private DeckComparison(
            DeckKind deck, List<Prediction> predictions, Driver driver, WaveformFile table, double stopTime) {
        this.deck = deck;
        this.predictions = predictions;
        this.driver = driver;
        this.table = table;
        this.stopTime = stopTime;
    }

    /**
     * The verdict on every figure that a deck settles. A table that cannot be trusted gives no verdict on any of them.
     *
     * @param deck the deck
     * @param predictions what the figures should be
     * @param driver the driver that they are for
     * @param table what the simulator wrote
     * @param stopTime the simulated time at which the deck ends [s]
     */
    public static DeckVerdict of(
            DeckKind deck, List<Prediction> predictions, Driver driver, WaveformFile table, double stopTime) {
        try {
            return new DeckComparison(deck, predictions, driver, table, stopTime).verdict();
        } catch (UserFault fault) {
            return DeckVerdict.noVerdict(deck, predictions, TrustCheck.failed("readable", fault.getMessage()));
        }
    }

    private DeckVerdict verdict() {
        Span span = table.span();
        if (span.end() < stopTime * (1 - 1e-9)) {
            return DeckVerdict.failed(deck, predictions, incomplete(span));
        }
        if (span.end() > stopTime * (1 + OVERSHOOT)) {
            return DeckVerdict.failed(deck, predictions, tooLong(span));
        }
        Window window = window(span);
        ProbeMeasurements measurements = new ProbeMeasurements(window, driver);
        Trust trust = new Trust(measurements, deck);
        Map<Prediction, PendingValue> pendingValues = pendingValues(measurements);
        ReadResult reading = measurements.pass().over(table);
        List<TrustCheck> checks = checks(span, window, reading, trust);
        if (checks.stream().anyMatch(check -> !check.passed())) {
            return DeckVerdict.noVerdict(deck, window.text(), predictions, checks);
        }
        List<Verdict> verdicts = new ArrayList<>();
        pendingValues.forEach((prediction, pending) -> verdicts.add(Verdict.of(prediction, pending.result())));
        if (deck.event()) {
            return new DeckVerdict(deck, window.text(), checks, verdicts);
        }
        List<Verdict> explained = DifferenceExplainer.explained(
                deck, new ProbeMeasurements(window, driver), EnumSet.allOf(Probe.class), table, verdicts);
        return new DeckVerdict(deck, window.text(), checks, explained);
    }

    /** Rounded down, so that an incomplete record never reads as 100 %. */
    private String incomplete(Span span) {
        return "incomplete: the record ends at " + Engineering.rounded(span.end(), "s") + " of "
                + Engineering.rounded(stopTime, "s") + " ("
                + PlainNumber.fixed(Math.floor(1000 * span.end() / stopTime) / 10, 1) + " %)";
    }

    private String tooLong(Span span) {
        return "the record ends at " + Engineering.rounded(span.end(), "s") + ", the deck at "
                + Engineering.rounded(stopTime, "s") + ": of another deck, shifted, or its times in another unit?";
    }

    private Window window(Span span) {
        return switch (deck) {
            case MAINS -> LineWindow.lastOrHalf(span, driver.line().frequency());
            case DIMMED -> LineWindow.last(span, driver.line().frequency(), 1);
            case CREST, NOISE -> lastSwitchingPeriods(span);
            case OPEN_STRING, SHORTED_STRING, SURGE, POWER_UP -> Window.of(span);
        };
    }

    private Window lastSwitchingPeriods(Span span) {
        MeasurementPass pass = new MeasurementPass();
        LastPeriods periods = pass.add(new LastPeriods(
                Window.of(span), ProbeMeasurements.gate(pass.channel(Probe.GATE_VOLTAGE.column())), CREST_PERIODS));
        pass.over(table);
        return periods.found(CREST_PERIODS_AT_LEAST);
    }

    private Map<Prediction, PendingValue> pendingValues(ProbeMeasurements measurements) {
        Map<Prediction, PendingValue> pendingValues = new LinkedHashMap<>();
        for (Prediction prediction : DeckVerdict.settled(deck, predictions)) {
            String figure = prediction.figure().name();
            PendingValue pending = FigureTable.take(figure, measurements).orElse(() -> unmeasured(figure));
            pendingValues.put(prediction, SpikeNote.noted(pending, prediction, measurements));
        }
        return pendingValues;
    }

    private static Measured unmeasured(String figure) {
        return Measured.absent("lampproof cannot measure " + figure);
    }

    private List<TrustCheck> checks(Span span, Window window, ReadResult reading, Trust trust) {
        List<TrustCheck> first = List.of(
                TrustCheck.passed("complete", "the record reaches " + Engineering.rounded(span.end(), "s")),
                readable(reading),
                TrustCheck.passed(deck.event() ? "window" : "periods", window.text()));
        return Stream.concat(first.stream(), trust.checks().stream()).toList();
    }

    static TrustCheck readable(ReadResult reading) {
        String defective = String.join(
                "; ",
                reading.remarks().stream()
                        .filter(Remark::isDefect)
                        .map(Remark::text)
                        .toList());
        return defective.isEmpty()
                ? TrustCheck.passed("readable", reading.rows() + " rows, every number finite, time never backwards")
                : TrustCheck.failed("readable", defective);
    }
}
