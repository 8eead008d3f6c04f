package lampproof.choice;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.prediction.Solution;
import lampproof.unit.Engineering;
import lampproof.unit.ValueStyle;

/**
 * A characteristic of every candidate, for a comparison side by side.
 *
 * @param group what it belongs to
 * @param name what it is
 * @param unit its unit
 * @param value the value of a candidate [unit]
 */
public record Characteristic(String group, String name, String unit, ToDoubleFunction<Candidate> value) {

    private static final String DIMMER = "dimmer";
    private static final Engineering APPARENT_POWER = Engineering.digits(3).inAscii();
    private static final double SQUARE_MILLIMETRES = 1e6;
    private static final double MILLIMETRES_TO_THE_FOURTH = 1e12;

    /** Every characteristic, in the order of a design review. */
    public static final List<Characteristic> ALL = List.of(
            of("power", "efficiency", "%", Solution::efficiency),
            of("power", "loss", "W", solution -> solution.losses().total()),
            of("power", "string power", "W", solution -> solution.string().power()),
            of("line", "line power", "W", solution -> solution.line().power()),
            new Characteristic("line", "power factor", "1", Candidate::powerFactor),
            new Characteristic(
                    "line", "harmonic distortion, orders 2 to 39", "%", candidate -> 100 * candidate.distortion()),
            new Characteristic("light", "percent flicker", "%", Characteristic::flicker),
            of(
                    "light",
                    "string current, peak",
                    "A",
                    solution -> solution.string().peakCurrent()),
            of(
                    "switch",
                    "switching frequency, least",
                    "Hz",
                    solution -> solution.stage().pace().leastFrequency()),
            of(
                    "switch",
                    "switching frequency, greatest",
                    "Hz",
                    solution -> solution.stage().pace().greatestFrequency()),
            of("switch", "switch voltage, peak", "V", Solution::nodeVoltage),
            of(
                    "switch",
                    "switch current, peak",
                    "A",
                    solution -> solution.stage().inductor().peak()),
            of(
                    "switch",
                    "switch stress",
                    "VA",
                    solution ->
                            solution.nodeVoltage() * solution.stage().inductor().peak()),
            of("diode", "diode voltage, peak", "V", Solution::reverseVoltage),
            of(
                    "diode",
                    "diode current, mean",
                    "A",
                    solution -> solution.stage().diode().mean()),
            of(
                    "diode",
                    "diode stress",
                    "VA",
                    solution -> solution.reverseVoltage()
                            * solution.stage().inductor().peak()),
            of(
                    "bridge",
                    "bridge voltage, peak",
                    "V",
                    solution -> solution.line().busPeak()),
            of(
                    "bridge",
                    "line current, peak with ripple",
                    "A",
                    solution -> solution.line().peakCurrent()),
            of(
                    "bridge",
                    "bridge stress",
                    "VA",
                    solution -> solution.line().busPeak() * solution.line().peakCurrent()),
            of(
                    "output",
                    "output voltage, peak",
                    "V",
                    solution -> solution.string().peakVoltage()),
            of(
                    "inductor",
                    "inductance",
                    "H",
                    solution -> solution.driver().inductor().inductance()),
            of(
                    "inductor",
                    "inductor current, peak",
                    "A",
                    solution -> solution.stage().inductor().peak()),
            new Characteristic("inductor", "stored energy, peak", "J", Candidate::inductorEnergy),
            new Characteristic(
                    "inductor",
                    "core area product",
                    "mm4",
                    candidate -> MILLIMETRES_TO_THE_FOURTH * candidate.areaProduct()),
            new Characteristic(DIMMER, "line voltage that moves no light", "V", Candidate::deadVoltage),
            new Characteristic(DIMMER, "dead travel of a dimmer", "deg", Candidate::deadTravel),
            new Characteristic(DIMMER, "least current, 30 to 150 deg", "A", Candidate::heldCurrent),
            new Characteristic(DIMMER, "dimmer load", "W", Candidate::dimmerLoad),
            new Characteristic(
                    "build", "parts", "", candidate -> candidate.bill().count()),
            new Characteristic(
                    "build",
                    "board area",
                    "mm2",
                    candidate -> SQUARE_MILLIMETRES * candidate.bill().area()),
            new Characteristic(
                    "build", "cost", "points", candidate -> candidate.bill().cost()),
            new Characteristic("heat", "hottest part", "degC", candidate -> candidate.temperature(candidate.hottest())),
            new Characteristic("heat", "life of what goes first", "h", Candidate::life));

    private static Characteristic of(String group, String name, String unit, ToDoubleFunction<Solution> value) {
        return new Characteristic(group, name, unit, candidate -> value.applyAsDouble(candidate.solution()));
    }

    /** The characteristics that matter for a lamp: those of the dimmer only where there is one. */
    public static List<Characteristic> of(Lamp lamp) {
        return ALL.stream()
                .filter(characteristic ->
                        lamp.isDimmed() || !characteristic.group().equals(DIMMER))
                .toList();
    }

    /** The characteristic of a name; it must be there. */
    public static Characteristic named(String name) {
        return ALL.stream()
                .filter(characteristic -> characteristic.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double flicker(Candidate candidate) {
        return 100 * candidate.solution().string().percentFlicker();
    }

    /** The value of a candidate with its unit; apparent powers keep their idle zeros. */
    public String text(Candidate candidate) {
        double own = value.applyAsDouble(candidate);
        return unit.equals("VA") ? APPARENT_POWER.text(own, unit) : ValueStyle.SENTENCE.text(own, unit);
    }
}
