package lampproof.compare;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;
import static lampproof.prediction.Probe.BLEEDER_CURRENT;
import static lampproof.prediction.Probe.BLEEDER_VOLTAGE;
import static lampproof.prediction.Probe.BRIDGE_CURRENT;
import static lampproof.prediction.Probe.BRIDGE_VOLTAGE;
import static lampproof.prediction.Probe.BUS_VOLTAGE;
import static lampproof.prediction.Probe.DIMMER_CURRENT;
import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.DIODE_VOLTAGE;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.LINE_CURRENT;
import static lampproof.prediction.Probe.LINE_VOLTAGE;
import static lampproof.prediction.Probe.OUTPUT_VOLTAGE;
import static lampproof.prediction.Probe.STRING_CURRENT;
import static lampproof.prediction.Probe.SWITCH_CURRENT;
import static lampproof.prediction.Probe.SWITCH_VOLTAGE;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.design.Dimming;
import lampproof.design.Exposure.Ratings;
import lampproof.design.LedString;
import lampproof.design.Line;
import lampproof.design.Topology;
import lampproof.measure.CycleSwing;
import lampproof.measure.DisplacementFactor;
import lampproof.measure.FlickerIndex;
import lampproof.measure.FlickerPercent;
import lampproof.measure.Harmonics;
import lampproof.measure.LineRipple;
import lampproof.measure.Measured;
import lampproof.measure.OnTime;
import lampproof.measure.Peak;
import lampproof.measure.PowerFactor;
import lampproof.measure.RootMeanSquare;
import lampproof.measure.ShareAbove;
import lampproof.measure.SwitchingFrequency;
import lampproof.measure.TimeToReach;
import lampproof.measure.TotalHarmonicDistortion;
import lampproof.measure.Trough;
import lampproof.measure.Window;
import lampproof.physics.HarmonicSpectrum;
import lampproof.prediction.HarmonicName;
import lampproof.prediction.Probe;

/** How each figure is measured on a deck's table. */
final class FigureTable {

    /** The running mean of flicker is a hundredth of the half cycle. */
    private static final double RUNNING_MEANS_PER_PERIOD = 200;

    /** Share of the line period that counts as the crest of the line, 1.8 degrees either way [-]. */
    private static final double CREST_SHARE = 0.01;

    /** The bridge conducts when it carries more than this share of the crest of a sinusoidal current for the string power [-]. */
    private static final double CONDUCTING = 0.01;

    private static final String WHILE_FORWARD = "measured on the inductor, whose current the diode carries";
    private static final String OUTSIDE_EDGES = "measured outside 0.2 us after each gate edge";

    private static final Map<String, Function<ProbeMeasurements, PendingValue>> TABLE = Stream.of(
                    figure("line.power.mean", b -> b.power(LINE_VOLTAGE, LINE_CURRENT)),
                    figure("line.current.rms", b -> b.rms(LINE_CURRENT)),
                    figure("line.current.peak", b -> b.magnitudePeak(LINE_CURRENT)),
                    figure("line.power_factor", FigureTable::powerFactor),
                    figure("line.displacement_factor", FigureTable::displacementFactor),
                    figure("line.current.thd", FigureTable::distortion),
                    figure("line.conduction_angle", FigureTable::conductionAngle),
                    figure("bridge.current.mean", b -> b.mean(BRIDGE_CURRENT)),
                    figure("bridge.current.rms", b -> b.rms(BRIDGE_CURRENT)),
                    figure(
                            "bridge.voltage.peak",
                            b -> b.add(new Peak(b.window(), b.sum(BUS_VOLTAGE, 0.5, BRIDGE_VOLTAGE)))),
                    figure("bridge.loss", b -> b.power(BRIDGE_VOLTAGE, BRIDGE_CURRENT)),
                    figure("filter.loss", ProbeMeasurements::filterLoss),
                    figure("bus.voltage.peak", b -> b.peak(BUS_VOLTAGE)),
                    figure("bus.ripple_current.rms", FigureTable::busRipple),
                    figure("inductor.current.peak", ProbeMeasurements::inductorPeak),
                    figure("inductor.current.rms", b -> b.rms(INDUCTOR_CURRENT)),
                    figure("inductor.current.ripple", b -> b.swing(INDUCTOR_CURRENT)),
                    figure(
                            "inductor.loss.copper",
                            b -> b.heat(b.driver().inductor().resistance(), INDUCTOR_CURRENT)),
                    figure(
                            "switch.current.peak",
                            b -> b.stressPeak(SWITCH_CURRENT).noted(OUTSIDE_EDGES)),
                    figure("switch.current.rms", b -> b.rms(SWITCH_CURRENT)),
                    figure("switch.current.mean", b -> b.mean(SWITCH_CURRENT)),
                    figure("switch.voltage.peak", b -> b.peak(SWITCH_VOLTAGE)),
                    figure("switch.loss", ProbeMeasurements::switchPower),
                    figure(
                            "switch.loss.conduction",
                            b -> b.heatWhileClosed(b.driver().powerSwitch().resistance(), SWITCH_CURRENT)),
                    figure(
                            "diode.current.peak",
                            b -> b.peakWhileForward(INDUCTOR_CURRENT, DIODE_VOLTAGE)
                                    .noted(WHILE_FORWARD)),
                    figure("diode.current.mean", b -> b.mean(DIODE_CURRENT)),
                    figure("diode.current.rms", b -> b.rms(DIODE_CURRENT)),
                    figure("diode.voltage.peak", b -> b.reversePeak(DIODE_VOLTAGE)),
                    figure("diode.loss.conduction", b -> b.forwardPower(DIODE_VOLTAGE, DIODE_CURRENT)),
                    figure("diode.loss.reverse", b -> b.reversePower(DIODE_VOLTAGE, DIODE_CURRENT)),
                    figure("switching.on_time", b -> b.add(new OnTime(b.window(), b.gate()))),
                    figure("switching.frequency.crest", FigureTable::crestFrequency),
                    figure("string.current.mean", b -> b.mean(STRING_CURRENT)),
                    figure("string.current.peak", b -> b.peak(STRING_CURRENT)),
                    figure(
                            "string.current.ripple.switching",
                            b -> b.add(new CycleSwing(b.window(), b.channel(STRING_CURRENT), b.gate()))),
                    figure("string.current.ripple.line", FigureTable::lineRipple),
                    figure("string.start_time", FigureTable::startTime),
                    figure("output.ripple_current.rms", FigureTable::outputRipple),
                    figure("string.power.mean", b -> b.power(OUTPUT_VOLTAGE, STRING_CURRENT)),
                    figure("string.flicker.percent", FigureTable::flickerPercent),
                    figure("string.flicker.index", FigureTable::flickerIndex),
                    figure("output.voltage.peak", b -> b.peak(OUTPUT_VOLTAGE)),
                    figure("bleeder.loss", b -> b.power(BLEEDER_VOLTAGE, BLEEDER_CURRENT)),
                    figure("dimmer.current.peak", b -> b.magnitudePeak(DIMMER_CURRENT)),
                    figure("dimmer.current.least", FigureTable::leastDimmerCurrent),
                    figure("sense.loss", b -> b.heatWhileClosed(b.driver().senseResistance(), SWITCH_CURRENT)),
                    figure(
                            "bus.voltage.stress",
                            b -> b.peak(BUS_VOLTAGE).times(100 / ratings(b).busVoltage())),
                    figure(
                            "switch.voltage.stress",
                            b -> b.peak(SWITCH_VOLTAGE).times(100 / ratings(b).switchVoltage())),
                    figure(
                            "switch.current.stress",
                            b -> b.stressPeak(SWITCH_CURRENT)
                                    .times(100 / ratings(b).switchCurrent())
                                    .noted(OUTSIDE_EDGES)),
                    figure(
                            "diode.voltage.stress",
                            b -> b.reversePeak(DIODE_VOLTAGE)
                                    .times(100 / ratings(b).diodeVoltage())),
                    figure(
                            "output.voltage.stress",
                            b -> b.peak(OUTPUT_VOLTAGE).times(100 / ratings(b).outputVoltage())),
                    figure("noise.level.fundamental", NoiseLevels::fundamental),
                    figure("noise.level.harmonics", NoiseLevels::harmonics),
                    figure("noise.margin.quasi_peak", NoiseLevels::margin),
                    figure("circuit.loss", b -> steadyInput(b).minus(b.power(OUTPUT_VOLTAGE, STRING_CURRENT))),
                    figure("circuit.efficiency", FigureTable::efficiency))
            .collect(toMap(Map.Entry::getKey, Map.Entry::getValue));

    private static final Map<String, Function<ProbeMeasurements, PendingValue>> HARMONICS = IntStream.iterate(
                    3, order -> order <= HarmonicSpectrum.HIGHEST_ORDER, order -> order + 2)
            .boxed()
            .collect(toMap(order -> HarmonicName.of(order), order -> measurements -> harmonic(measurements, order)));

    private FigureTable() {}

    /** The names of all figures that can be measured. */
    static Set<String> names() {
        return Stream.concat(TABLE.keySet().stream(), HARMONICS.keySet().stream())
                .collect(toSet());
    }

    /** Adds the measurement of a figure. */
    static Optional<PendingValue> take(String figure, ProbeMeasurements measurements) {
        return Optional.ofNullable(TABLE.get(figure))
                .or(() -> Optional.ofNullable(HARMONICS.get(figure)))
                .map(recipe -> recipe.apply(measurements));
    }

    private static Map.Entry<String, Function<ProbeMeasurements, PendingValue>> figure(
            String name, Function<ProbeMeasurements, PendingValue> recipe) {
        return Map.entry(name, recipe);
    }

    private static Ratings ratings(ProbeMeasurements b) {
        return b.driver().exposure().ratings();
    }

    private static PendingValue powerFactor(ProbeMeasurements b) {
        return b.add(new PowerFactor(b.window(), b.channel(LINE_VOLTAGE), b.channel(LINE_CURRENT)));
    }

    private static PendingValue displacementFactor(ProbeMeasurements b) {
        Harmonics voltage = b.spectrum(LINE_VOLTAGE);
        Harmonics current = b.spectrum(LINE_CURRENT);
        return () -> DisplacementFactor.of(voltage, current);
    }

    private static PendingValue distortion(ProbeMeasurements b) {
        Harmonics current = b.spectrum(LINE_CURRENT);
        return () -> TotalHarmonicDistortion.of(current, HarmonicSpectrum.HIGHEST_ORDER)
                .map(share -> 100 * share);
    }

    private static PendingValue harmonic(ProbeMeasurements b, int order) {
        Harmonics current = b.spectrum(LINE_CURRENT);
        return () -> current.result()
                .then(fundamental ->
                        Measured.ratio(100 * current.rms(order).value(), fundamental, "there is no fundamental"));
    }

    private static PendingValue conductionAngle(ProbeMeasurements b) {
        LedString string = b.driver().string();
        double power = string.current() * string.voltage(string.current());
        double crestCurrent = 2 * power / b.driver().line().crest();
        double degree = b.driver().line().halfPeriod() / 180;
        return b.add(new ShareAbove(b.window(), b.channel(BRIDGE_CURRENT), CONDUCTING * crestCurrent, degree))
                .times(180);
    }

    /** Current of the bridge less that of the converter. */
    private static PendingValue busRipple(ProbeMeasurements b) {
        Probe taken = b.driver().topology() == Topology.STEP_UP ? INDUCTOR_CURRENT : SWITCH_CURRENT;
        return b.add(new RootMeanSquare(b.window(), b.difference(BRIDGE_CURRENT, taken)));
    }

    /** Current of the converter less that of the string. */
    private static PendingValue outputRipple(ProbeMeasurements b) {
        Probe given = b.driver().topology() == Topology.STEP_UP ? DIODE_CURRENT : INDUCTOR_CURRENT;
        return b.add(new RootMeanSquare(b.window(), b.difference(given, STRING_CURRENT)));
    }

    private static PendingValue startTime(ProbeMeasurements b) {
        double half = 0.5 * b.driver().string().current();
        return b.add(new TimeToReach(b.window(), b.channel(STRING_CURRENT), half));
    }

    private static PendingValue lineRipple(ProbeMeasurements b) {
        return b.add(new LineRipple(
                b.window(), b.channel(STRING_CURRENT), b.driver().line().frequency()));
    }

    /** In a record of a line period or half of one around its first crest; with the line held at its crest anywhere. */
    private static PendingValue crestFrequency(ProbeMeasurements b) {
        Window window = b.window();
        double period = 1 / b.driver().line().frequency();
        if (window.length() < period / 4) {
            return b.add(new SwitchingFrequency(window, b.gate()));
        }
        double crest = window.start() + period / 4;
        double half = CREST_SHARE * period / 2;
        return b.add(new SwitchingFrequency(Window.of(crest - half, crest + half), b.gate()));
    }

    private static PendingValue flickerPercent(ProbeMeasurements b) {
        return b.add(new FlickerPercent(b.window(), b.channel(STRING_CURRENT), runningMean(b)))
                .times(100);
    }

    private static PendingValue flickerIndex(ProbeMeasurements b) {
        return b.add(new FlickerIndex(b.window(), b.channel(STRING_CURRENT), runningMean(b)));
    }

    private static double runningMean(ProbeMeasurements b) {
        return 1 / (RUNNING_MEANS_PER_PERIOD * b.driver().line().frequency());
    }

    /** In both half cycles of a line period; a reversed current is ignored. */
    private static PendingValue leastDimmerCurrent(ProbeMeasurements b) {
        Line line = b.driver().line();
        double start = b.window().start();
        PendingValue negative = b.add(new Peak(dimmerWindow(b, start), b.channel(DIMMER_CURRENT)))
                .times(-1);
        Window second = dimmerWindow(b, start + line.halfPeriod());
        PendingValue positive = b.add(new Trough(second, b.channel(DIMMER_CURRENT)));
        return negative.with(positive, (one, other) -> Math.max(0, Math.min(one, other)));
    }

    private static Window dimmerWindow(ProbeMeasurements b, double zeroCrossing) {
        Dimming dimming = b.driver().dimming();
        Line line = b.driver().line();
        return Window.of(zeroCrossing + dimming.watchFrom(line), zeroCrossing + dimming.watchUntil(line));
    }

    /** Line power less the power into the energy stores. */
    private static PendingValue steadyInput(ProbeMeasurements b) {
        return b.power(LINE_VOLTAGE, LINE_CURRENT).minus(b.storedPower());
    }

    private static PendingValue efficiency(ProbeMeasurements b) {
        PendingValue input = steadyInput(b);
        PendingValue output = b.power(OUTPUT_VOLTAGE, STRING_CURRENT);
        return () ->
                output.result().then(out -> input.result().then(in -> Measured.ratio(100 * out, in, "no input power")));
    }
}
