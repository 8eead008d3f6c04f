package lampproof.compare;

import static lampproof.prediction.Probe.BUS_VOLTAGE;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.OUTPUT_VOLTAGE;
import static lampproof.prediction.Probe.STRING_CURRENT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lampproof.measure.LineWindow;
import lampproof.measure.Mean;
import lampproof.measure.Measured;
import lampproof.measure.Measurement;
import lampproof.measure.Peak;
import lampproof.measure.ValueAtEnd;
import lampproof.measure.ValueAtStart;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.unit.Engineering;

/**
 * Whether a record repeats itself.
 *
 * <p>The two halves of a window must agree. Where the window is a single half period of the line it must end as it
 * started: the energy that a store gains in it would grow with each half period.
 */
final class Settling {

    /** Limits are common practice, no source: half of what the figures are compared with. */
    private static final double VOLTAGE_BAND = 0.01;

    private static final double CURRENT_BAND = 0.02;

    /** As much as the voltage band. */
    private static final double ENERGY_BAND = 2 * VOLTAGE_BAND;

    /** Every deck starts from the predicted steady state. */
    private static final String LEAVES =
            ": the run leaves the predicted steady state, so circuit and prediction differ;"
                    + " a later stop time in .tran lets it settle and gives a verdict on each figure";

    private final ProbeMeasurements measurements;
    private final List<Change> changes = new ArrayList<>();

    /** Two measurements of a probe, and the change between them relative to a reference. */
    private record Change(
            Probe probe,
            String what,
            PendingValue before,
            String then,
            PendingValue after,
            PendingValue share,
            String of,
            double band) {

        boolean moves() {
            return !(nearness() <= 1);
        }

        /** The change over its band; not a number when something is absent. */
        double nearness() {
            Measured change = share.result();
            return change.present() ? Math.abs(change.value()) / band : Double.NaN;
        }

        String text() {
            Measured change = share.result();
            return change.present()
                    ? probe.dotted() + " " + what.formatted(value(before)) + ", " + value(after) + " " + then + " ("
                            + TrustCheck.percent(Math.abs(change.value())) + of + ", limit " + TrustCheck.percent(band)
                            + ")"
                    : probe.dotted() + ": " + change.note();
        }

        private String value(PendingValue pending) {
            return Engineering.rounded(pending.result().value(), probe.unit());
        }
    }

    Settling(ProbeMeasurements measurements, DeckKind kind) {
        this.measurements = measurements;
        if (single()) {
            returns(OUTPUT_VOLTAGE, VOLTAGE_BAND, pending -> pending, this::outputScale, " of its peak");
            returns(BUS_VOLTAGE, ENERGY_BAND, pending -> pending.squareTimes(1), peak -> peak, " of its peak energy");
            returns(STRING_CURRENT, CURRENT_BAND, pending -> pending, peak -> peak, " of its peak");
        } else {
            means(OUTPUT_VOLTAGE, VOLTAGE_BAND);
            means(BUS_VOLTAGE, VOLTAGE_BAND);
            if (kind.held()) {
                halves(
                        INDUCTOR_CURRENT,
                        "peak",
                        CURRENT_BAND,
                        w -> new Peak(w, measurements.channel(INDUCTOR_CURRENT)));
            } else {
                means(STRING_CURRENT, CURRENT_BAND);
            }
        }
    }

    /** The check, once the pass is over. */
    TrustCheck check() {
        List<String> moving =
                changes.stream().filter(Change::moves).map(Change::text).toList();
        return moving.isEmpty()
                ? TrustCheck.passed("settled", widest().text())
                : TrustCheck.failed("settled", "not settled: " + String.join("; ", moving) + LEAVES);
    }

    /** Whether the window is one half period of the line. */
    private boolean single() {
        return measurements.window().what().equals(LineWindow.HALF_PERIOD);
    }

    private void means(Probe probe, double band) {
        halves(probe, "mean", band, window -> new Mean(window, measurements.channel(probe)));
    }

    private void halves(Probe probe, String statistic, double band, Function<Window, Measurement> measurement) {
        Window window = measurements.window();
        double middle = window.start() + window.length() / 2;
        PendingValue first = measurements.add(measurement.apply(Window.of(window.start(), middle)));
        PendingValue second = measurements.add(measurement.apply(Window.of(middle, window.end())));
        PendingValue larger = first.with(second, (a, b) -> Math.max(Math.abs(a), Math.abs(b)));
        PendingValue share = share(first, second, larger);
        changes.add(new Change(
                probe, statistic + " %s in the first half", first, "in the second", second, share, "", band));
    }

    /** The bus voltage falls steeply at the zero crossing of the line; its energy is the better measure. */
    private void returns(
            Probe probe,
            double band,
            UnaryOperator<PendingValue> measure,
            UnaryOperator<PendingValue> scale,
            String of) {
        PendingValue start = measurements.add(new ValueAtStart(measurements.window(), measurements.channel(probe)));
        PendingValue end = measurements.add(new ValueAtEnd(measurements.window(), measurements.channel(probe)));
        PendingValue peak = measurements.magnitudePeak(probe);
        PendingValue share = share(measure.apply(start), measure.apply(end), scale.apply(measure.apply(peak)));
        changes.add(new Change(probe, "%s at its start", start, "at its end", end, share, of, band));
    }

    /**
     * The peak, or the voltage that the charge of the string in the window would lift the capacitor to: a small capacitor forgets
     * its state within the window, wherever its ripple happens to stand at both ends.
     */
    private PendingValue outputScale(PendingValue peak) {
        Window window = measurements.window();
        double capacitance = measurements.driver().output().capacitance();
        PendingValue current = measurements.add(new Mean(window, measurements.channel(STRING_CURRENT)));
        return peak.with(current, (voltage, mean) -> Math.max(voltage, Math.abs(mean) * window.length() / capacitance));
    }

    private static PendingValue share(PendingValue before, PendingValue after, PendingValue scale) {
        return after.minus(before).with(scale, (change, whole) -> change == 0 ? 0 : change / whole);
    }

    /** The change nearest to its limit. */
    private Change widest() {
        return changes.stream()
                .max((a, b) -> Double.compare(a.nearness(), b.nearness()))
                .orElseThrow();
    }
}
