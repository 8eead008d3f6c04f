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
import lampproof.unit.Engineering;

/**
 * Whether a simulation can be trusted: settled, resolved, and its energy accounted for.
 *
 * <p>A simulator may end normally and be wrong. The energy balance of a wrong run does not close.
 */
final class Trust {

    /** Common practice, no source: the tolerance of means. */
    private static final double ENERGY_BAND = 0.02;

    /** Probes whose mean is positive in a lit lamp; behind a dimmer the lamp may be dark. */
    private static final List<Probe> ONE_WAY = List.of(
            STRING_CURRENT,
            BUS_VOLTAGE,
            OUTPUT_VOLTAGE,
            INDUCTOR_CURRENT,
            SWITCH_VOLTAGE,
            SWITCH_CURRENT,
            DIODE_CURRENT);

    private final ProbeMeasurements measurements;
    private final DeckKind kind;
    private final boolean event;
    private final Settling settling;
    private final Resolution resolution;
    private final PendingValue input;
    private final PendingValue parts;
    private final PendingValue released;
    private final Map<Probe, PendingValue> oneWay = new EnumMap<>(Probe.class);

    Trust(ProbeMeasurements measurements, DeckKind kind) {
        this.measurements = measurements;
        this.kind = kind;
        this.event = kind.event();
        settling = new Settling(measurements, kind);
        resolution = new Resolution(measurements);
        input = measurements.power(LINE_VOLTAGE, LINE_CURRENT);
        parts = losses().plus(kind.held() ? intoOutput() : intoString());
        released = released();
        if (kind != DeckKind.DIMMED) {
            ONE_WAY.forEach(probe -> oneWay.put(probe, measurements.mean(probe)));
        }
    }

    /** The checks, once the pass is over. */
    List<TrustCheck> checks() {
        return event
                ? List.of(resolution.checkOfEvent(), energyOfEvent())
                : List.of(resolution.check(), settling.check(), energy());
    }

    /** In an event the stores may supply or absorb far more than the line: the reference is the sum of both. */
    private TrustCheck energyOfEvent() {
        Measured turned = input.result().with(released.result(), (in, stores) -> Math.abs(in) + Math.abs(stores));
        return closes(turned, measurements.window().length(), "J", "from line and stores");
    }

    /** Mean power out of the output and bus capacitors, the large stores. */
    private PendingValue released() {
        Driver driver = measurements.driver();
        return measurements
                .outputCapacitorPower()
                .plus(measurements.capacitorPower(driver.busCapacitance(), BUS_VOLTAGE));
    }

    private TrustCheck energy() {
        Measured taken = input.result();
        if (taken.present() && taken.value() <= 0) {
            String power = Engineering.rounded(taken.value(), "W");
            return TrustCheck.failed("energy", "no power flows in from the line (" + power + "): is a probe reversed?");
        }
        TrustCheck books = closes(taken, 1, "W", "from the line");
        return books.passed() ? reversed().orElse(books) : books;
    }

    /**
     * A probe whose mean is negative although the circuit allows only positive values; the energy may balance without
     * it.
     */
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
                                + " in the mean, but positive in every lit lamp: is a probe reversed?"));
    }

    /**
     * Whether the energy closes: input less all parts, relative to a power [W]; the text shows that power times a
     * factor.
     */
    private TrustCheck closes(Measured turned, double factor, String unit, String source) {
        Measured share =
                input.result().with(parts.result(), (in, all) -> in - all).with(turned, (rest, whole) -> rest / whole);
        if (!share.present()) {
            return TrustCheck.failed("energy", share.note());
        }
        boolean closes = Math.abs(share.value()) <= ENERGY_BAND;
        String text =
                TrustCheck.percent(share.value()) + " of the " + Engineering.rounded(turned.value() * factor, unit)
                        + " " + source + " is not accounted for (limit " + TrustCheck.percent(ENERGY_BAND) + ")";
        return TrustCheck.of("energy", closes, closes ? text : "energy does not close: " + text);
    }

    /** Mean power into every part except output and string, losses and stored energy. */
    private PendingValue losses() {
        Driver driver = measurements.driver();
        return (kind == DeckKind.DIMMED ? dimmerLoad().plus(measurements.filterLoss()) : measurements.filterLoss())
                .plus(measurements.capacitorPower(driver.filter().capacitance(), FILTERED_VOLTAGE))
                .plus(measurements.power(BRIDGE_VOLTAGE, BRIDGE_CURRENT))
                .plus(measurements.capacitorPower(driver.busCapacitance(), BUS_VOLTAGE))
                .plus(measurements.power(INDUCTOR_VOLTAGE, INDUCTOR_CURRENT))
                .plus(measurements.power(SWITCH_VOLTAGE, SWITCH_CURRENT))
                .plus(measurements.power(DIODE_VOLTAGE, DIODE_CURRENT));
    }

    private PendingValue dimmerLoad() {
        return measurements.power(BLEEDER_VOLTAGE, BLEEDER_CURRENT).plus(measurements.power(BUS_VOLTAGE, BIAS_CURRENT));
    }

    private PendingValue intoString() {
        return measurements.power(OUTPUT_VOLTAGE, STRING_CURRENT).plus(measurements.outputCapacitorPower());
    }

    /**
     * With the line held at its crest, a source in parallel with the string absorbs what the output would store: not
     * probed.
     */
    private PendingValue intoOutput() {
        boolean stepUp = measurements.driver().topology() == Topology.STEP_UP;
        return measurements.power(OUTPUT_VOLTAGE, stepUp ? DIODE_CURRENT : INDUCTOR_CURRENT);
    }
}
