package lampproof.spec;

import static java.util.stream.Collectors.toMap;
import static lampproof.unit.Dimension.ANGLE;
import static lampproof.unit.Dimension.CAPACITANCE;
import static lampproof.unit.Dimension.CHARGE;
import static lampproof.unit.Dimension.COUNT;
import static lampproof.unit.Dimension.CURRENT;
import static lampproof.unit.Dimension.DURATION;
import static lampproof.unit.Dimension.FREQUENCY;
import static lampproof.unit.Dimension.INDUCTANCE;
import static lampproof.unit.Dimension.LENGTH;
import static lampproof.unit.Dimension.NUMBER;
import static lampproof.unit.Dimension.RATIO;
import static lampproof.unit.Dimension.RESISTANCE;
import static lampproof.unit.Dimension.SLOPE;
import static lampproof.unit.Dimension.TEMPERATURE;
import static lampproof.unit.Dimension.THERMAL_RESISTANCE;
import static lampproof.unit.Dimension.TIME;
import static lampproof.unit.Dimension.VOLTAGE;
import static lampproof.unit.Dimension.VOLT_PER_KELVIN;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import lampproof.unit.Dimension;

/**
 * Every name that a spec may hold. To add one, add a line to the table.
 *
 * <p>The ranges are common practice, no source: what is physically plausible in a lamp of 3 to 25 W on a line of 100 to
 * 277 V, with a margin. They detect a wrong prefix, not a bad design. Besides the table any {@code tolerance.FIGURE}
 * is known; whether there is such a figure is checked by the package {@code prediction}.
 */
public final class Vocabulary {

    private static final String TOLERANCE = "tolerance.";
    private static final Pattern FIGURE = Pattern.compile("[a-z][a-z0-9_]*(\\.[a-z0-9_]+)*");
    private static final List<String> REQUIRED =
            List.of("driver.topology", "line.voltage", "line.frequency", "string.voltage", "string.current");

    private static final Map<String, String> STAND_INS = Map.of("string.voltage", "string.voltage_low");

    private static final List<Entry> TABLE = List.of(
            quantity("line.voltage", VOLTAGE, 80, 305, "rms voltage of the mains"),
            quantity("line.frequency", FREQUENCY, 45, 65, "frequency of the mains"),
            quantity("line.resistance", RESISTANCE, 0, 100, "resistance of the mains and the wiring"),
            //
            choice("dimmer.edge", "none leading trailing", "phase edge that the wall dimmer cuts"),
            quantity("dimmer.angle", ANGLE, 0, 180, "conduction angle of the dimmer in each half cycle"),
            quantity("dimmer.capacitance", CAPACITANCE, 10e-9, 1e-6, "noise capacitor across the dimmer"),
            quantity("dimmer.inductance", INDUCTANCE, 20e-6, 10e-3, "noise choke of the dimmer"),
            quantity("dimmer.holding_current", CURRENT, 0, 0.5, "current below which the triac turns off"),
            //
            quantity("filter.fuse_resistance", RESISTANCE, 0, 1e3, "fuse or fusible resistor in the line"),
            quantity("filter.inductance", INDUCTANCE, 0, 100e-3, "differential-mode choke"),
            quantity("filter.resistance", RESISTANCE, 0, 500, "resistance of filter.inductance"),
            quantity("filter.damping", RESISTANCE, 0, 1e6, "resistor that damps the filter"),
            quantity("filter.capacitance", CAPACITANCE, 0, 10e-6, "capacitor across the line, before the bridge"),
            quantity(
                    "filter.dissipation_factor",
                    RATIO,
                    0,
                    0.2,
                    "dissipation factor of filter.capacitance at the line frequency"),
            //
            quantity("bridge.drop", VOLTAGE, 0, 3, "threshold voltage of one bridge diode"),
            quantity("bridge.resistance", RESISTANCE, 0, 50, "dynamic resistance of one bridge diode"),
            quantity("bridge.voltage_rating", VOLTAGE, 20, 2000, "reverse voltage rating of one bridge diode"),
            quantity("bridge.current_rating", CURRENT, 1e-3, 100, "mean current rating of one bridge diode"),
            quantity("bridge.temperature_rating", TEMPERATURE, 40, 250, "highest temperature of the bridge"),
            quantity("bus.capacitance", CAPACITANCE, 0, 100e-6, "capacitor after the bridge"),
            quantity("bus.resistance", RESISTANCE, 0, 100, "series resistance of bus.capacitance"),
            quantity("bus.voltage_rating", VOLTAGE, 20, 2000, "voltage rating of bus.capacitance"),
            //
            choice("driver.topology", "step-down step-up", "converter"),
            choice("driver.control", "boundary fixed-duty peak-current fixed-off-time", "control law"),
            quantity("driver.shaping", NUMBER, 0, 1, "reference current: 0 flat, 1 following the line"),
            //
            quantity("switching.frequency", FREQUENCY, 10e3, 1e6, "switching frequency, at the crest where it varies"),
            quantity("switching.on_time", TIME, 10e-9, 1e-3, "on-time of the switch"),
            quantity("switching.off_time", TIME, 10e-9, 1e-3, "off-time of the switch"),
            quantity("switching.min_off_time", TIME, 0, 100e-6, "minimum off-time of the switch"),
            quantity("switching.max_on_time", TIME, 100e-9, 1e-3, "maximum on-time of the switch"),
            quantity("switching.delay", TIME, 0, 10e-6, "delay from comparator to turn-off of the switch"),
            quantity("switching.blanking", TIME, 0, 10e-6, "leading-edge blanking time of the sense signal"),
            quantity(
                    "switching.current_limit",
                    CURRENT,
                    1e-3,
                    100,
                    "switch current at which the protection opens the switch"),
            quantity(
                    "switching.restart_time",
                    TIME,
                    10e-6,
                    10e-3,
                    "boundary control: restart time if the inductor current does not return to zero"),
            quantity("switching.slope", SLOPE, 0, 100e6, "slope compensation, subtracted from the reference current"),
            //
            quantity("inductor.inductance", INDUCTANCE, 1e-6, 0.1, "inductance at the working current"),
            quantity("inductor.resistance", RESISTANCE, 0, 200, "dc resistance of the winding at working temperature"),
            quantity("inductor.saturation_current", CURRENT, 1e-3, 50, "current at which the core saturates"),
            choice(
                    "inductor.saturation",
                    "none hard",
                    "inductance above inductor.saturation_current: constant, or one tenth"),
            choice("inductor.core", "", "core, by its name in the table of cores"),
            quantity("inductor.turns", COUNT, 1, 5000, "turns of the winding"),
            quantity("inductor.gap", LENGTH, 0, 20e-3, "total air gap of the core"),
            quantity("inductor.strands", COUNT, 1, 5000, "strands of the wire"),
            quantity("inductor.wire_diameter", LENGTH, 10e-6, 5e-3, "copper diameter of a strand"),
            choice("inductor.model", "", "file of a sub-circuit (pins in, out) that replaces the inductor"),
            quantity("inductor.temperature_rating", TEMPERATURE, 40, 250, "highest temperature of core and winding"),
            //
            quantity("switch.resistance", RESISTANCE, 0, 200, "resistance when closed, at working temperature"),
            quantity("switch.capacitance", CAPACITANCE, 0, 10e-9, "output capacitance, energy-related"),
            quantity(
                    "switch.snubber_capacitance",
                    CAPACITANCE,
                    0,
                    1e-9,
                    "capacitance of an RC snubber across the switch"),
            quantity("switch.gate_charge", CHARGE, 0, 1e-6, "total charge of the gate"),
            quantity("switch.gate_voltage", VOLTAGE, 1, 30, "drive voltage of the gate"),
            quantity("switch.transition_time", TIME, 0, 1e-6, "overlap of voltage and current in one transition"),
            quantity("switch.voltage_rating", VOLTAGE, 20, 2000, "voltage rating of the switch"),
            quantity("switch.current_rating", CURRENT, 1e-3, 100, "peak current rating of the switch"),
            choice("switch.model", "", "file of a sub-circuit (pins drain, gate, source) that replaces the switch"),
            quantity("switch.temperature_rating", TEMPERATURE, 40, 250, "highest junction temperature of the switch"),
            //
            quantity("diode.drop", VOLTAGE, 0, 5, "threshold voltage of the freewheeling diode"),
            quantity("diode.resistance", RESISTANCE, 0, 100, "dynamic resistance of the freewheeling diode"),
            quantity(
                    "diode.capacitance",
                    CAPACITANCE,
                    0,
                    10e-9,
                    "junction capacitance, energy-related, in addition to switch.capacitance"),
            quantity("diode.recovery_charge", CHARGE, 0, 10e-6, "reverse recovery charge"),
            quantity(
                    "diode.recovery_current",
                    CURRENT,
                    1e-3,
                    100,
                    "forward current before turn-off at which diode.recovery_charge is stated"),
            choice("diode.recovery", "none soft", "reverse recovery of the diode in the decks"),
            quantity("diode.voltage_rating", VOLTAGE, 20, 2000, "reverse voltage rating of the diode"),
            quantity("diode.current_rating", CURRENT, 1e-3, 100, "mean current rating of the diode"),
            choice("diode.model", "", "file of a sub-circuit (pins anode, cathode) that replaces the diode"),
            quantity("diode.temperature_rating", TEMPERATURE, 40, 250, "highest junction temperature of the diode"),
            //
            quantity("sense.resistance", RESISTANCE, 1e-3, 1e3, "resistor that senses the switch current"),
            quantity(
                    "sense.reference",
                    VOLTAGE,
                    1e-3,
                    10,
                    "voltage across the sense resistor at which the switch opens"),
            //
            quantity(
                    "output.capacitance", CAPACITANCE, 0, 10e-3, "capacitor across the string, at its working voltage"),
            quantity("output.nominal_capacitance", CAPACITANCE, 0, 10e-3, "output.capacitance without voltage"),
            quantity(
                    "output.capacitance_left",
                    RATIO,
                    0.05,
                    1,
                    "share of output.nominal_capacitance left at output.voltage_rating"),
            quantity("output.resistance", RESISTANCE, 0, 100, "series resistance of output.capacitance"),
            quantity("output.voltage_rating", VOLTAGE, 2, 2000, "voltage rating of output.capacitance"),
            quantity(
                    "output.voltage_limit",
                    VOLTAGE,
                    2,
                    2000,
                    "output voltage at which the protection stops the control cell"),
            choice(
                    "output.smoothing",
                    "line switching",
                    "ripple of the string current that output.capacitance smooths"),
            choice("output.kind", "film ceramic electrolytic", "dielectric of output.capacitance"),
            quantity("output.temperature_rating", TEMPERATURE, 40, 250, "highest temperature of output.capacitance"),
            //
            quantity(
                    "bleeder.resistance",
                    RESISTANCE,
                    100,
                    10e6,
                    "bleeder resistor across the bus: load for the dimmer"),
            quantity(
                    "bleeder.threshold",
                    VOLTAGE,
                    0,
                    500,
                    "rectified line voltage above which the bleeder switches off"),
            quantity("bleeder.hold_current", CURRENT, 0, 0.5, "lowest dimmer current that the bleeder maintains"),
            quantity("bias.current", CURRENT, 0, 0.1, "supply current of the controller"),
            quantity("bias.voltage", VOLTAGE, 1, 50, "supply voltage of the controller"),
            //
            quantity("string.voltage", VOLTAGE, 2, 600, "voltage of the LED string at string.current, 25 degC"),
            quantity("string.current", CURRENT, 1e-3, 3, "mean current of the LED string"),
            quantity("string.resistance", RESISTANCE, 0, 50e3, "dynamic resistance of the string at string.current"),
            quantity("string.voltage_low", VOLTAGE, 2, 600, "voltage of the string at string.current_low"),
            quantity("string.current_low", CURRENT, 1e-4, 10, "lowest current at which the string voltage is known"),
            quantity("string.voltage_mid", VOLTAGE, 2, 600, "voltage of the string at string.current_mid"),
            quantity(
                    "string.current_mid",
                    CURRENT,
                    1e-4,
                    10,
                    "current of a third point, between string.current_low and string.current_high"),
            quantity("string.voltage_high", VOLTAGE, 2, 600, "voltage of the string at string.current_high"),
            quantity("string.current_high", CURRENT, 1e-4, 10, "highest current at which the string voltage is known"),
            quantity(
                    "string.point_temperature",
                    TEMPERATURE,
                    -40,
                    200,
                    "junction temperature at which these string voltages hold"),
            quantity("string.short_resistance", RESISTANCE, 10e-3, 100, "resistance of a shorted string"),
            quantity("string.count", COUNT, 1, 500, "LED junctions in series"),
            quantity(
                    "string.temperature_slope",
                    VOLT_PER_KELVIN,
                    -5,
                    0,
                    "change of the string voltage with temperature"),
            quantity("string.light_share", RATIO, 0, 0.9, "share of the string power emitted as light"),
            choice("string.model", "", "file of a sub-circuit (pins anode, cathode) that replaces the string"),
            quantity("string.temperature_rating", TEMPERATURE, 40, 250, "highest junction temperature of the LEDs"),
            //
            choice("surge.wave", "ring combination", "100 kHz ring wave, or 1.2/50 - 8/20 us combination wave"),
            quantity("surge.voltage", VOLTAGE, 10, 10e3, "open-circuit peak of the surge generator, line to neutral"),
            quantity("surge.impedance", RESISTANCE, 1, 500, "source resistance of the ring wave generator"),
            quantity("surge.angle", ANGLE, 0, 180, "line angle of the surge"),
            //
            quantity(
                    "derating.voltage",
                    RATIO,
                    0.3,
                    1,
                    "share of a semiconductor voltage rating allowed in normal operation"),
            quantity(
                    "derating.current",
                    RATIO,
                    0.3,
                    1,
                    "share of a semiconductor current rating allowed in normal operation"),
            quantity(
                    "derating.capacitor",
                    RATIO,
                    0.3,
                    1,
                    "share of a capacitor voltage rating allowed in normal operation"),
            //
            quantity("ambient.temperature", TEMPERATURE, -40, 85, "temperature of the air around the lamp"),
            quantity("ambient.coldest", TEMPERATURE, -60, 85, "lowest air temperature at which the lamp must start"),
            quantity(
                    "thermal.housing",
                    THERMAL_RESISTANCE,
                    0,
                    200,
                    "thermal resistance from inside the housing to ambient"),
            quantity(
                    "thermal.bridge",
                    THERMAL_RESISTANCE,
                    0,
                    1e3,
                    "thermal resistance from the bridge to the inside of the housing"),
            quantity(
                    "thermal.inductor",
                    THERMAL_RESISTANCE,
                    0,
                    1e3,
                    "thermal resistance from the inductor to the inside of the housing"),
            quantity(
                    "thermal.switch",
                    THERMAL_RESISTANCE,
                    0,
                    1e3,
                    "thermal resistance from the switch to the inside of the housing"),
            quantity(
                    "thermal.diode",
                    THERMAL_RESISTANCE,
                    0,
                    1e3,
                    "thermal resistance from the diode to the inside of the housing"),
            quantity(
                    "thermal.output",
                    THERMAL_RESISTANCE,
                    0,
                    1e3,
                    "thermal resistance from the output capacitor to the inside"),
            quantity(
                    "thermal.string",
                    THERMAL_RESISTANCE,
                    0,
                    200,
                    "thermal resistance from the LED junctions to the inside"),
            //
            quantity("life.hours_cool", DURATION, 100, 1e7, "life of the LEDs at life.temperature_cool"),
            quantity("life.temperature_cool", TEMPERATURE, -40, 200, "lower of the two temperatures of the LED life"),
            quantity("life.hours_hot", DURATION, 100, 1e7, "life of the LEDs at life.temperature_hot"),
            quantity("life.temperature_hot", TEMPERATURE, -40, 200, "higher of the two temperatures of the LED life"),
            quantity(
                    "life.capacitor_hours_cool",
                    DURATION,
                    100,
                    1e7,
                    "life of the output capacitor at life.capacitor_temperature_cool"),
            quantity(
                    "life.capacitor_temperature_cool",
                    TEMPERATURE,
                    -40,
                    200,
                    "lower of the two temperatures of the capacitor life"),
            quantity(
                    "life.capacitor_hours_hot",
                    DURATION,
                    100,
                    1e7,
                    "life of the output capacitor at life.capacitor_temperature_hot"),
            quantity(
                    "life.capacitor_temperature_hot",
                    TEMPERATURE,
                    -40,
                    200,
                    "higher of the two temperatures of the capacitor life"),
            //
            choice("decks.corners", "nominal all", "simulate typical values only, or every corner of min and max"),
            quantity("decks.time_limit", TIME, 1, 86400, "time limit of one simulation"),
            choice("decks.detail", "coarse normal fine", "number of simulation points: coarse is fast, fine is slow"),
            quantity("decks.power_up_angle", ANGLE, 0, 360, "line angle at which the mains is switched on"),
            quantity("decks.cycles", COUNT, 1, 1000, "measured line cycles"),
            //
            quantity("tolerance.mean", RATIO, 0, 1, "tolerance of simulated against predicted means and rms values"),
            quantity("tolerance.peak", RATIO, 0, 1, "tolerance of simulated against predicted peaks and frequencies"));

    private static final Map<String, Entry> BY_NAME =
            TABLE.stream().collect(toMap(Entry::name, Function.identity(), Vocabulary::neverTwice, LinkedHashMap::new));

    private Vocabulary() {}

    /** The whole table, in the order of the circuit. */
    public static List<Entry> entries() {
        return TABLE;
    }

    /** The names of the table, in its order. */
    public static List<String> names() {
        return TABLE.stream().map(Entry::name).toList();
    }

    /** The groups of the names, in the order of the table. */
    public static List<String> groups() {
        return TABLE.stream().map(Vocabulary::group).distinct().toList();
    }

    /** The entries of a group, in the order of the table; empty if there is no such group. */
    public static List<Entry> group(String group) {
        return TABLE.stream().filter(entry -> group(entry).equals(group)).toList();
    }

    private static String group(Entry entry) {
        return entry.name().split("\\.", 2)[0];
    }

    /** The names that every spec must hold. */
    public static List<String> required() {
        return REQUIRED;
    }

    /** The names that a lamp must hold whose converter is still to be chosen. */
    public static List<String> requiredOfLamp() {
        return REQUIRED.stream().filter(name -> !name.equals("driver.topology")).toList();
    }

    /** The name from whose group of rows a required one follows, if there is such a name. */
    static Optional<String> standIn(String required) {
        return Optional.ofNullable(STAND_INS.get(required));
    }

    /** The entry of a name, or nothing when it is unknown. */
    public static Optional<Entry> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name)).or(() -> tolerance(name));
    }

    /**
     * The quantity of that name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Quantity quantity(String name) {
        return find(name)
                .filter(Quantity.class::isInstance)
                .map(Quantity.class::cast)
                .orElseThrow(() -> unknown(name));
    }

    /**
     * The choice of that name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Choice choice(String name) {
        return find(name)
                .filter(Choice.class::isInstance)
                .map(Choice.class::cast)
                .orElseThrow(() -> unknown(name));
    }

    static IllegalArgumentException unknown(String name) {
        return new IllegalArgumentException("the vocabulary has no " + name + " of this kind");
    }

    private static Optional<Entry> tolerance(String name) {
        return Optional.of(name)
                .filter(text -> text.startsWith(TOLERANCE))
                .map(text -> text.substring(TOLERANCE.length()))
                .filter(FIGURE.asMatchPredicate())
                .map(figure -> quantity(name, RATIO, 0, 1, "tolerance of simulated against predicted " + figure));
    }

    private static Entry quantity(String name, Dimension dimension, double least, double most, String meaning) {
        return new Quantity(name, dimension, least, most, meaning);
    }

    private static Entry choice(String name, String words, String meaning) {
        return new Choice(name, words.isEmpty() ? List.of() : List.of(words.split(" ")), meaning);
    }

    private static Entry neverTwice(Entry one, Entry other) {
        throw new IllegalStateException(one.name() + " is in the vocabulary twice");
    }
}
