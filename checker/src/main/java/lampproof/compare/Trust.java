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

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampproof.design.Driver;
import lampproof.design.Topology;
import lampproof.measure.Measured;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.waveform.Engineering;

/**
 * Whether a simulation can be trusted: settled, resolved, and its energy accounted for.
 *
 * <p>A simulator may end without a word and be wrong. What it cannot do is be wrong and keep the books of energy.
 */
final class Trust {

    /** Common practice, no source: as far off as means may be. */
    private static final double ENERGY_BAND = 0.02;

    /** Above zero in the mean wherever a lamp is lit, which a dimmer may keep it from. */
    private static final List<Probe> ONE_WAY = List.of(
            STRING_CURRENT,
            BUS_VOLTAGE,
            OUTPUT_VOLTAGE,
            INDUCTOR_CURRENT,
            SWITCH_VOLTAGE,
            SWITCH_CURRENT,
            DIODE_CURRENT);

    private final Bench bench;
    private final DeckKind kind;
    private final boolean event;
    private final Settling settling;
    private final Resolution resolution;
    private final Taking input;
    private final Taking parts;
    private final Taking released;
    private final Map<Probe, Taking> oneWay = new EnumMap<>(Probe.class);

    Trust(Bench bench, DeckKind kind) {
        this.bench = bench;
        this.kind = kind;
        this.event = kind.event();
        settling = new Settling(bench, kind);
        resolution = new Resolution(bench);
        input = bench.power(LINE_VOLTAGE, LINE_CURRENT);
        parts = losses().plus(kind.held() ? intoOutput() : intoString());
        released = released();
        if (kind != DeckKind.DIMMED) {
            ONE_WAY.forEach(probe -> oneWay.put(probe, bench.mean(probe)));
        }
    }

    /** The checks, once the pass is over. */
    List<TrustCheck> checks() {
        return event
                ? List.of(resolution.checkOfEvent(), energyOfEvent())
                : List.of(resolution.check(), settling.check(), energy());
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
        TrustCheck books = closes(taken, 1, "W", "from the line");
        return books.passed() ? reversed().orElse(books) : books;
    }

    /** A probe whose mean is negative where the circuit lets it only be positive; the books may close without it. */
    private Optional<TrustCheck> reversed() {
        return oneWay.entrySet().stream()
                .filter(each -> each.getValue().result().present()
                        && each.getValue().result().value() < 0)
                .findFirst()
                .map(each -> TrustCheck.failed(
                        "energy",
                        each.getKey().dotted() + " is "
                                + Engineering.rounded(
                                        each.getValue().result().value(),
                                        each.getKey().unit())
                                + " in the mean, but a lamp at work has it above zero: a probe turned round?"));
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
