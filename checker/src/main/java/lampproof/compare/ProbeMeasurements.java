package lampproof.compare;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampproof.design.Driver;
import lampproof.design.Output;
import lampproof.measure.Channel;
import lampproof.measure.ForwardPower;
import lampproof.measure.Gate;
import lampproof.measure.Harmonics;
import lampproof.measure.Interpolation;
import lampproof.measure.Mean;
import lampproof.measure.MeanProduct;
import lampproof.measure.MeanSquareWhileClosed;
import lampproof.measure.Measurement;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Peak;
import lampproof.measure.PeakOutsideEdges;
import lampproof.measure.PeakOutsideEdges.After;
import lampproof.measure.PeakToPeak;
import lampproof.measure.PeakWhileClosed;
import lampproof.measure.ReachablePeak;
import lampproof.measure.ReversePower;
import lampproof.measure.RootMeanSquare;
import lampproof.measure.StoredEnergy;
import lampproof.measure.SwitchPower;
import lampproof.measure.ValueAtEnd;
import lampproof.measure.ValueAtStart;
import lampproof.measure.Window;
import lampproof.prediction.Probe;

/** Measurements on the probes of a deck, made in one pass over one window. */
final class ProbeMeasurements {

    /** Time after each edge of the gate that the stress of a part excludes [s]. */
    static final double EDGE = 0.2e-6;

    private static final double GATE_THRESHOLD = 0.5;
    private static final double GATE_HYSTERESIS = 0.1;

    /** The switch of the decks closes so far above the threshold and opens so far below it. */
    private static final double SWITCH_HYSTERESIS = 0.1;

    private final MeasurementPass pass;
    private final Map<Probe, Channel> channels = new EnumMap<>(Probe.class);
    private final Map<Probe, Harmonics> spectra = new EnumMap<>(Probe.class);
    private final Map<Probe, Harmonics> switchingSpectra = new EnumMap<>(Probe.class);
    private final Window window;
    private final Driver driver;

    ProbeMeasurements(Window window, Driver driver) {
        this(window, driver, Interpolation.LINEAR);
    }

    ProbeMeasurements(Window window, Driver driver, Interpolation interpolation) {
        this.pass = new MeasurementPass(interpolation);
        this.window = window;
        this.driver = driver;
    }

    MeasurementPass pass() {
        return pass;
    }

    Window window() {
        return window;
    }

    Driver driver() {
        return driver;
    }

    /** The probes that the measurements so far use. */
    Set<Probe> probes() {
        return Arrays.stream(Probe.values())
                .filter(probe -> pass.columns().contains(probe.column()))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The probes that a recipe uses, found by a trial run. */
    @SuppressWarnings("ReturnValueIgnored")
    Set<Probe> probesOf(Function<ProbeMeasurements, ?> recipe) {
        ProbeMeasurements trial = new ProbeMeasurements(window, driver);
        recipe.apply(trial);
        return trial.probes();
    }

    Channel channel(Probe probe) {
        return channels.computeIfAbsent(probe, p -> pass.channel(p.column()));
    }

    Gate gate() {
        return gate(channel(Probe.GATE_VOLTAGE));
    }

    private Gate powerSwitch() {
        return new Gate(channel(Probe.GATE_VOLTAGE), GATE_THRESHOLD, SWITCH_HYSTERESIS);
    }

    static Gate gate(Channel channel) {
        return new Gate(channel, GATE_THRESHOLD);
    }

    PendingValue add(Measurement measurement) {
        return pass.add(measurement)::result;
    }

    PendingValue mean(Probe probe) {
        return add(new Mean(window, channel(probe)));
    }

    PendingValue rms(Probe probe) {
        return add(new RootMeanSquare(window, channel(probe)));
    }

    PendingValue power(Probe voltage, Probe current) {
        return add(new MeanProduct(window, channel(voltage), channel(current)));
    }

    /** Power of a diode while it conducts. */
    PendingValue forwardPower(Probe voltage, Probe current) {
        return add(new ForwardPower(window, channel(voltage), channel(current)));
    }

    /** Power of a diode while it recovers. */
    PendingValue reversePower(Probe voltage, Probe current) {
        return add(new ReversePower(window, channel(voltage), channel(current)));
    }

    /** Power of the switch with its capacitance; the gate of a deck closes it above its middle and opens it below that. */
    PendingValue switchPower() {
        Gate gate = new Gate(channel(Probe.GATE_VOLTAGE), GATE_THRESHOLD, GATE_HYSTERESIS);
        return add(new SwitchPower(window, channel(Probe.SWITCH_VOLTAGE), channel(Probe.SWITCH_CURRENT), gate));
    }

    /** Loss in a resistance [Ohm] that carries a probed current only while the gate is closed. */
    PendingValue heatWhileClosed(double resistance, Probe current) {
        return add(new MeanSquareWhileClosed(window, channel(current), powerSwitch()))
                .times(resistance);
    }

    /** Loss in a resistance [Ohm] that carries a probed current. */
    PendingValue heat(double resistance, Probe current) {
        return rms(current).squareTimes(resistance);
    }

    PendingValue peak(Probe probe) {
        return add(new Peak(window, channel(probe)));
    }

    /** Peak of the inductor current; an impossible point is omitted. */
    PendingValue inductorPeak() {
        Channel voltage = channel(Probe.INDUCTOR_VOLTAGE);
        Channel current = channel(Probe.INDUCTOR_CURRENT);
        return add(new ReachablePeak(window, voltage, current, driver.inductor().inductance()));
    }

    PendingValue reversePeak(Probe probe) {
        return add(new Peak(window, reversed(probe)));
    }

    PendingValue magnitudePeak(Probe probe) {
        return peak(probe).with(reversePeak(probe), Math::max);
    }

    /** The peak outside the edges of the gate, where capacitances are charged through the part. */
    PendingValue stressPeak(Probe probe) {
        return add(new PeakOutsideEdges(window, channel(probe), gate(), After.BOTH, EDGE));
    }

    /**
     * The peak while a diode conducts.
     *
     * <p>Gear's rule computes the derivative of the node voltage over its last two steps. Where the diode stops the
     * node, its own current is therefore up to half too large for one to three points.
     */
    PendingValue peakWhileForward(Probe current, Probe diodeVoltage) {
        return add(new PeakWhileClosed(window, channel(current), new Gate(channel(diodeVoltage), 0)));
    }

    PendingValue swing(Probe probe) {
        return add(new PeakToPeak(window, channel(probe)));
    }

    Harmonics spectrum(Probe probe) {
        return spectra.computeIfAbsent(
                probe,
                p -> pass.add(new Harmonics(window, channel(p), driver.line().frequency())));
    }

    /** The harmonics of the switching frequency, in a window of whole switching periods. */
    Harmonics switchingSpectrum(Probe probe) {
        return switchingSpectra.computeIfAbsent(
                probe, p -> pass.add(new Harmonics(window, channel(p), 1 / window.period())));
    }

    /** Loss of everything between the line and the bridge. */
    PendingValue filterLoss() {
        Channel drop = difference(Probe.LINE_VOLTAGE, Probe.FILTERED_VOLTAGE);
        return add(new MeanProduct(window, drop, channel(Probe.LINE_CURRENT)));
    }

    /** One probe less another. */
    Channel difference(Probe one, Probe other) {
        String name = one.dotted() + " less " + other.dotted();
        return pass.channel(name, Map.of(one.column(), 1.0, other.column(), -1.0), 0);
    }

    /** One probe and a share of another. */
    Channel sum(Probe one, double share, Probe other) {
        String name = one.dotted() + " and " + share + " " + other.dotted();
        return pass.channel(name, Map.of(one.column(), 1.0, other.column(), share), 0);
    }

    /** Mean power that goes into a capacitance [F] at a probed voltage. */
    PendingValue capacitorPower(double capacitance, Probe voltage) {
        return storedPower(voltage).times(StoredEnergy.ofCapacitor(capacitance, 1));
    }

    /** Mean power that goes into the output capacitor, whose capacitance may fall with voltage. */
    PendingValue outputCapacitorPower() {
        Output output = driver.output();
        PendingValue end = add(new ValueAtEnd(window, channel(Probe.OUTPUT_VOLTAGE)));
        PendingValue start = add(new ValueAtStart(window, channel(Probe.OUTPUT_VOLTAGE)));
        return end.with(start, (last, first) -> output.energy(last) - output.energy(first))
                .times(1 / window.length());
    }

    /** Mean power that goes into an inductance [H] with a probed current. */
    PendingValue inductorPower(double inductance, Probe current) {
        return storedPower(current).times(StoredEnergy.ofInductor(inductance, 1));
    }

    /** Mean power into all energy stores of the circuit; the filter inductor carries the line current. */
    PendingValue storedPower() {
        return capacitorPower(driver.filter().capacitance(), Probe.FILTERED_VOLTAGE)
                .plus(capacitorPower(driver.busCapacitance(), Probe.BUS_VOLTAGE))
                .plus(outputCapacitorPower())
                .plus(inductorPower(driver.filter().inductance(), Probe.LINE_CURRENT))
                .plus(inductorPower(driver.inductor().inductance(), Probe.INDUCTOR_CURRENT));
    }

    private PendingValue storedPower(Probe probe) {
        PendingValue end = add(new ValueAtEnd(window, channel(probe)));
        PendingValue start = add(new ValueAtStart(window, channel(probe)));
        return end.squareTimes(1).minus(start.squareTimes(1)).times(1 / window.length());
    }

    Channel reversed(Probe probe) {
        return pass.channel(probe.column(), -1);
    }
}
