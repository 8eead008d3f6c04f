package lampproof.design;

import static lampproof.physics.PreferredSeries.E12;
import static lampproof.physics.PreferredSeries.E24;
import static lampproof.physics.PreferredSeries.E6;

import java.util.Locale;
import lampproof.physics.DcmBoostLineCurrent;
import lampproof.spec.Spec;

/**
 * Chooses what a spec leaves open, part by part, by rules of thumb of the trade (common practice, no source) on the
 * lossless converter at the crest of the line.
 */
public final class Sizing {

    private static final double EXPECTED_EFFICIENCY = 0.92;

    private static final double RIPPLE = 0.6;

    private final Choosing choose;
    private final Topology topology;
    private final Law law;
    private final Line line;
    private final LedString string;
    private final double stringVoltage;
    private final double power;
    private final double frequency;
    private final double shaping;

    private Sizing(Spec spec) {
        choose = new Choosing(spec);
        topology = word(Topology.values(), spec.word("driver.topology").orElseThrow());
        law = word(
                Law.values(), choose.word("driver.control", "boundary: simplest with a good power factor", "boundary"));
        line = line();
        stringVoltage = choose.given("string.voltage");
        string = string();
        power = stringVoltage * string.current() / EXPECTED_EFFICIENCY;
        frequency = choose.amount(
                "switching.frequency", "65 kHz: below the 150 kHz edge of the conducted limits", () -> 65e3);
        shaping = law.setsCurrent()
                ? choose.amount("driver.shaping", "1: the reference follows the line for the power factor", () -> 1)
                : 0;
    }

    /**
     * The design of a spec, every value given or chosen.
     *
     * @throws lampproof.fault.UserFault when physics forbids the combination
     */
    public static Design of(Spec spec) {
        Feasibility.require(spec);
        Sizing sizing = new Sizing(spec);
        Driver driver = sizing.driver();
        return new Design(driver, sizing.choose.rows());
    }

    private Driver driver() {
        double bus = choose.amount(
                "bus.capacitance",
                "a tenth of what would turn the line current by 45 degrees, E6",
                () -> E6.nearest(0.1 * displacement()));
        Filter filter = filter(bus);
        Rectifier bridge = rectifier("bridge", 0.8, power / line.voltage());
        Inductor inductor = inductor();
        PowerSwitch powerSwitch = powerSwitch();
        Rectifier diode = rectifier("diode", 0.9, crestPeak());
        double sense = choose.amount(
                "sense.resistance", "0.5 V at the crest peak current, E24", () -> E24.nearest(0.5 / crestPeak()));
        Output output = output();
        return new Driver(
                topology, line, filter, bridge, bus, inductor, powerSwitch, diode, sense, output, string, control());
    }

    private Line line() {
        return new Line(
                choose.given("line.voltage"),
                choose.given("line.frequency"),
                choose.amount("line.resistance", "1 Ohm of house wiring", () -> 1));
    }

    private LedString string() {
        double current = choose.given("string.current");
        double resistance = choose.amount(
                "string.resistance",
                "a tenth of string voltage over string current",
                () -> twoDigits(0.1 * stringVoltage / current));
        return new LedString(stringVoltage - resistance * current, resistance, current);
    }

    /** Capacitance whose reactive current equals the active one [F]. */
    private double displacement() {
        return power / (line.voltage() * line.voltage() * line.angularFrequency());
    }

    private Filter filter(double bus) {
        double fuse = choose.amount(
                "filter.fuse_resistance",
                "loses a fifth of a per cent of the power, E12",
                () -> E12.nearest(0.002 * line.voltage() * line.voltage() / power));
        double capacitance =
                choose.amount("filter.capacitance", "half the bus capacitance, E6", () -> E6.nearest(0.5 * bus));
        double inductance = choose.amount(
                "filter.inductance",
                "corner with both capacitors at a sixth of the switching frequency, E6",
                () -> E6.up(1 / (square(2 * Math.PI * frequency / 6) * (bus + capacitance))));
        double resistance = choose.amount("filter.resistance", "3 Ohm for each mH", () -> twoDigits(3e3 * inductance));
        double damping = choose.amount(
                "filter.damping",
                "one and a half times the characteristic impedance, E12",
                () -> E12.nearest(1.5 * Math.sqrt(inductance / (bus + capacitance))));
        return new Filter(fuse, inductance, resistance, damping, capacitance);
    }

    private Rectifier rectifier(String part, double usual, double current) {
        double drop = choose.amount(part + ".drop", "junction diode at " + milliamperes(current), () -> usual);
        double resistance =
                choose.amount(part + ".resistance", "small junction diode", () -> twoDigits(0.03 / current));
        return Rectifier.through(drop, current, 1.8, resistance);
    }

    private Inductor inductor() {
        double inductance =
                choose.amount("inductor.inductance", inductanceRule(), () -> E12.nearest(crestInductance()));
        double resistance = choose.amount(
                "inductor.resistance",
                "loses half a per cent of the power",
                () -> twoDigits(0.005 * power / square(lineRms())));
        return new Inductor(inductance, resistance);
    }

    private String inductanceRule() {
        return switch (law) {
            case BOUNDARY -> "switching.frequency at the crest, E12";
            case FIXED_DUTY -> "current flows for " + percent(conductionShare()) + " of the cycle at the crest, E12";
            case PEAK_CURRENT, FIXED_OFF_TIME -> "ripple of " + percent(RIPPLE) + " of the mean at the crest, E12";
        };
    }

    private PowerSwitch powerSwitch() {
        double resistance = choose.amount(
                "switch.resistance",
                "loses 0.4 % of the power, from 1 to 10 Ohm",
                () -> twoDigits(Math.max(1, Math.min(10, 0.004 * power / (square(lineRms()) * crestDuty())))));
        double capacitance = choose.amount(
                "switch.capacitance",
                "100 pF Ohm of silicon and 10 pF of diode and winding",
                () -> twoDigits(100e-12 / resistance + 10e-12));
        return new PowerSwitch(resistance, capacitance);
    }

    private Output output() {
        return new Output(choose.amount("output.capacitance", outputRule(), () -> E6.up(outputCapacitance())));
    }

    private String outputRule() {
        return topology == Topology.STEP_UP
                ? "percent flicker of 30 %, film, E6"
                : "switching ripple of a twentieth of the string current at the crest, ceramic or film, E6";
    }

    /** First order: the string's resistance and the capacitor divide the line ripple, or the switching ripple. */
    private double outputCapacitance() {
        if (topology == Topology.STEP_UP) {
            double attenuation = Math.sqrt(1 / square(0.30) - 1);
            return attenuation / (2 * line.angularFrequency() * string.resistance());
        }
        return crestRipple() / (8 * frequency * string.resistance() * 0.05 * crestCurrent());
    }

    private Control control() {
        double delay = choose.amount("switching.delay", "60 ns from comparator to switch", () -> 60e-9);
        double offTime = law == Law.FIXED_OFF_TIME
                ? choose.amount(
                        "switching.off_time",
                        "switching.frequency at the crest",
                        () -> twoDigits(crestSource() / (crestSwing() * frequency)))
                : 0;
        double minOffTime = law == Law.BOUNDARY
                ? choose.amount(
                        "switching.min_off_time", "a tenth of the crest period", () -> twoDigits(0.1 / frequency))
                : 0;
        double maxOnTime = law.setsCurrent()
                ? choose.amount(
                        "switching.max_on_time",
                        maxOnTimeRule(),
                        () -> twoDigits((law == Law.PEAK_CURRENT ? 0.9 : 2) / frequency))
                : 0;
        double blanking = law.setsCurrent()
                ? choose.amount("switching.blanking", "250 ns, longer than the turn-on spike", () -> 250e-9)
                : 0;
        double slope = law == Law.PEAK_CURRENT
                ? choose.amount(
                        "switching.slope",
                        "three quarters of the falling slope at the crest",
                        () -> twoDigits(0.75 * (crestSwing() - crestSource()) / crestInductance()))
                : 0;
        return new Control(law, frequency, offTime, minOffTime, maxOnTime, delay, blanking, shaping, slope);
    }

    private String maxOnTimeRule() {
        return law == Law.PEAK_CURRENT ? "nine tenths of the period" : "twice the crest period";
    }

    /** Source of the cell at the crest [V]. */
    private double crestSource() {
        return topology == Topology.STEP_UP ? line.crest() : line.crest() - stringVoltage;
    }

    /** Node voltage of the cell at the crest while the diode conducts [V]. */
    private double crestSwing() {
        return topology == Topology.STEP_UP ? stringVoltage : line.crest();
    }

    private double crestDuty() {
        return 1 - crestSource() / crestSwing();
    }

    /** Mean inductor current at the crest [A]. */
    private double crestCurrent() {
        if (law == Law.FIXED_DUTY) {
            return fixedDutyCurrent();
        }
        double shape = (1 - shaping) * 2 / Math.PI + shaping / 2;
        if (topology == Topology.STEP_UP) {
            return law.setsCurrent() ? power / (line.crest() * shape) : 2 * power / line.crest();
        }
        return law.setsCurrent()
                ? string.current() / (1 - shaping + shaping * 2 / Math.PI)
                : string.current() * crestSource() / meanExcess();
    }

    /**
     * Mean inductor current at the crest under constant duty [A]: steeper than the line, as v / (1 - v / V) in a step-up
     * and v (v - V) in a step-down converter.
     */
    private double fixedDutyCurrent() {
        double crest = line.crest();
        if (topology == Topology.STEP_UP) {
            return DcmBoostLineCurrent.crestCurrent(crest, stringVoltage, power);
        }
        double angle = Math.asin(stringVoltage / crest);
        double square = crest * (Math.PI - 2 * angle + Math.sin(2 * angle)) / 2;
        double mean = (square - 2 * stringVoltage * Math.cos(angle)) / Math.PI;
        return string.current() * crestSource() / mean;
    }

    /** Mean over the half cycle of what the line stands above the string [V]. */
    private double meanExcess() {
        double angle = Math.asin(stringVoltage / line.crest());
        return (2 * line.crest() * Math.cos(angle) - stringVoltage * (Math.PI - 2 * angle)) / Math.PI;
    }

    private double conductionShare() {
        return law == Law.FIXED_DUTY ? 0.8 : 1;
    }

    /** Swing of the inductor current at the crest [A]. */
    private double crestRipple() {
        return law.setsCurrent() ? RIPPLE * crestCurrent() : 2 * crestCurrent() / conductionShare();
    }

    private double crestPeak() {
        return law.setsCurrent() ? crestCurrent() + 0.5 * crestRipple() : crestRipple();
    }

    /** Inductance that gives the ripple at the crest at the switching frequency [H]. */
    private double crestInductance() {
        double source = crestSource();
        double share = law.setsCurrent() ? 1 : conductionShare();
        return share * source * (crestSwing() - source) / (crestSwing() * frequency * crestRipple());
    }

    /** Rms inductor current over the line half cycle, roughly [A]. */
    private double lineRms() {
        return law.setsCurrent() ? 0.75 * crestCurrent() : 2 * crestCurrent() / Math.sqrt(6);
    }

    private static <E extends Enum<E>> E word(E[] values, String word) {
        for (E value : values) {
            if (value.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no such word: " + word);
    }

    private static double twoDigits(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.1e", value));
    }

    private static String milliamperes(double current) {
        return String.format(Locale.ROOT, "%.3g mA", 1e3 * current);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static double square(double x) {
        return x * x;
    }
}
