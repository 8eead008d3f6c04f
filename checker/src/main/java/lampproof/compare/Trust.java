package lampproof.compare;

import static lampproof.prediction.Probe.BIAS_CURRENT;
import static lampproof.prediction.Probe.BLEEDER_CURRENT;
import static lampproof.prediction.Probe.BLEEDER_VOLTAGE;
import static lampproof.prediction.Probe.BRIDGE_CURRENT;
import static lampproof.prediction.Probe.BRIDGE_VOLTAGE;
import static lampproof.prediction.Probe.BUS_VOLTAGE;
import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.DIODE_VOLTAGE;
import static lampproof.prediction.Probe.FILTERED_VOLTAGE;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.INDUCTOR_VOLTAGE;
import static lampproof.prediction.Probe.LINE_CURRENT;
import static lampproof.prediction.Probe.LINE_VOLTAGE;
import static lampproof.prediction.Probe.OUTPUT_VOLTAGE;
import static lampproof.prediction.Probe.STRING_CURRENT;
import static lampproof.prediction.Probe.SWITCH_CURRENT;
import static lampproof.prediction.Probe.SWITCH_VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Topology;
import lampproof.measure.Mean;
import lampproof.measure.Measured;
import lampproof.measure.Peak;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.waveform.Engineering;

/**
 * Whether a simulation can be trusted: settled, resolved, and its energy accounted for.
 *
 * <p>A simulator may end without a word and be wrong. What it cannot do is be wrong and keep the books of energy.
 */
final class Trust {

    /** Limits are common practice, no source: half of what the figures are compared with, or less. */
    private static final double VOLTAGE_BAND = 0.01;

    private static final double CURRENT_BAND = 0.02;
    private static final double ENERGY_BAND = 0.02;

    /** Every deck starts from the predicted steady state. */
    private static final String LEAVES =
            ": the run leaves the predicted steady state, so circuit and prediction differ;"
                    + " a later stop time in .tran lets it settle, and each figure is told";

    private final Bench bench;
    private final DeckKind kind;
    private final boolean event;
    private final List<Half> halves = new ArrayList<>();
    private final Resolution resolution;
    private final Taking input;
    private final Taking parts;
    private final Taking released;

    /** What is taken of a probe over each half of the window. */
    private record Half(Probe probe, String statistic, Taking first, Taking second, double band) {}

    Trust(Bench bench, DeckKind kind) {
        this.bench = bench;
        this.kind = kind;
        this.event = kind.event();
        if (!event) {
            halves(kind);
        }
        resolution = new Resolution(bench);
        input = bench.power(LINE_VOLTAGE, LINE_CURRENT);
        parts = losses().plus(kind.held() ? intoOutput() : intoString());
        released = released();
    }

    /** The checks, once the pass is over. */
    List<TrustCheck> checks() {
        return event
                ? List.of(resolution.checkOfEvent(), energyOfEvent())
                : List.of(resolution.check(), settled(), energy());
    }

    private void halves(DeckKind kind) {
        means(OUTPUT_VOLTAGE, VOLTAGE_BAND);
        means(BUS_VOLTAGE, VOLTAGE_BAND);
        if (kind.held()) {
            peaks(INDUCTOR_CURRENT, CURRENT_BAND);
        } else {
            means(STRING_CURRENT, CURRENT_BAND);
        }
    }

    private void means(Probe probe, double band) {
        Window window = bench.window();
        Taking first = bench.add(new Mean(firstHalf(window), bench.channel(probe)));
        Taking second = bench.add(new Mean(secondHalf(window), bench.channel(probe)));
        halves.add(new Half(probe, "mean", first, second, band));
    }

    private void peaks(Probe probe, double band) {
        Window window = bench.window();
        Taking first = bench.add(new Peak(firstHalf(window), bench.channel(probe)));
        Taking second = bench.add(new Peak(secondHalf(window), bench.channel(probe)));
        halves.add(new Half(probe, "peak", first, second, band));
    }

    private static Window firstHalf(Window window) {
        return Window.of(window.start(), window.start() + window.length() / 2);
    }

    private static Window secondHalf(Window window) {
        return Window.of(window.start() + window.length() / 2, window.end());
    }

    private TrustCheck settled() {
        List<String> moving =
                halves.stream().filter(Trust::moves).map(Trust::told).toList();
        return moving.isEmpty()
                ? TrustCheck.passed("settled", told(widest()))
                : TrustCheck.failed("settled", "not settled: " + String.join("; ", moving) + LEAVES);
    }

    /** The half that comes nearest to its band. */
    private Half widest() {
        return halves.stream()
                .max((a, b) -> Double.compare(change(a) / a.band(), change(b) / b.band()))
                .orElseThrow();
    }

    private static boolean moves(Half half) {
        return !(change(half) <= half.band());
    }

    /** Change from the first to the second half, relative to the larger; not a number when one is absent. */
    private static double change(Half half) {
        Measured first = half.first().result();
        Measured second = half.second().result();
        if (!first.present() || !second.present()) {
            return Double.NaN;
        }
        double larger = Math.max(Math.abs(first.value()), Math.abs(second.value()));
        return larger == 0 ? 0 : Math.abs(second.value() - first.value()) / larger;
    }

    private static String told(Half half) {
        Measured absent = half.first().result().with(half.second().result(), (a, b) -> b - a);
        if (!absent.present()) {
            return half.probe().dotted() + ": " + absent.note();
        }
        return half.probe().dotted() + " " + half.statistic() + " "
                + Engineering.rounded(
                        half.first().result().value(), half.probe().unit()) + " in the first half, "
                + Engineering.rounded(
                        half.second().result().value(), half.probe().unit()) + " in the second ("
                + percent(change(half)) + ", limit " + percent(half.band()) + ")";
    }

    /** In an event the stores may give far more than the line, or take it: both are what must be accounted for. */
    private TrustCheck energyOfEvent() {
        Measured turned = input.result().with(released.result(), (in, stores) -> Math.abs(in) + Math.abs(stores));
        return closes(turned, bench.window().length(), "J", "from line and stores");
    }

    /** Mean power out of the output and bus capacitors, the large stores. */
    private Taking released() {
        Driver driver = bench.driver();
        return bench.chargingOutput().plus(bench.charging(driver.busCapacitance(), BUS_VOLTAGE));
    }

    private TrustCheck energy() {
        Measured taken = input.result();
        if (taken.present() && taken.value() <= 0) {
            String power = Engineering.rounded(taken.value(), "W");
            return TrustCheck.failed(
                    "energy", "no power flows in from the line (" + power + "): a probe turned round?");
        }
        return closes(taken, 1, "W", "from the line");
    }

    /** Whether what no part accounts for is little of the power [W] that is turned over; told times a factor. */
    private TrustCheck closes(Measured turned, double factor, String unit, String whence) {
        Measured share =
                input.result().with(parts.result(), (in, all) -> in - all).with(turned, (rest, whole) -> rest / whole);
        if (!share.present()) {
            return TrustCheck.failed("energy", share.note());
        }
        boolean closes = Math.abs(share.value()) <= ENERGY_BAND;
        String text = percent(share.value()) + " of the " + Engineering.rounded(turned.value() * factor, unit) + " "
                + whence + " is not accounted for (limit " + percent(ENERGY_BAND) + ")";
        return TrustCheck.of("energy", closes, closes ? text : "energy does not close: " + text);
    }

    /** A share in per cent, without a sign before zero. */
    static String percent(double share) {
        return Engineering.fixed(Math.rint(1e4 * share) / 1e2 + 0.0, 2) + " %";
    }

    /** Mean power into every part but output and string, lossy or storing. */
    private Taking losses() {
        Driver driver = bench.driver();
        return (kind == DeckKind.DIMMED ? dimmerLoad().plus(bench.filterLoss()) : bench.filterLoss())
                .plus(bench.charging(driver.filter().capacitance(), FILTERED_VOLTAGE))
                .plus(bench.power(BRIDGE_VOLTAGE, BRIDGE_CURRENT))
                .plus(bench.charging(driver.busCapacitance(), BUS_VOLTAGE))
                .plus(bench.power(INDUCTOR_VOLTAGE, INDUCTOR_CURRENT))
                .plus(bench.power(SWITCH_VOLTAGE, SWITCH_CURRENT))
                .plus(bench.power(DIODE_VOLTAGE, DIODE_CURRENT));
    }

    private Taking dimmerLoad() {
        return bench.power(BLEEDER_VOLTAGE, BLEEDER_CURRENT).plus(bench.power(BUS_VOLTAGE, BIAS_CURRENT));
    }

    private Taking intoString() {
        return bench.power(OUTPUT_VOLTAGE, STRING_CURRENT).plus(bench.chargingOutput());
    }

    /** With the line held at its crest a source beside the string takes what the output would store: not probed. */
    private Taking intoOutput() {
        boolean stepUp = bench.driver().topology() == Topology.STEP_UP;
        return bench.power(OUTPUT_VOLTAGE, stepUp ? DIODE_CURRENT : INDUCTOR_CURRENT);
    }
}
