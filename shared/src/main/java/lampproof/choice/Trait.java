package lampproof.choice;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lampproof.prediction.Solution;

/**
 * Something that every candidate has and that can be set side by side.
 *
 * @param group what it belongs to
 * @param name what it is
 * @param unit its unit
 * @param value the value of a candidate [unit]
 */
public record Trait(String group, String name, String unit, ToDoubleFunction<Candidate> value) {

    private static final String DIMMER = "dimmer";
    private static final double SQUARE_MILLIMETRES = 1e6;
    private static final double MILLIMETRES_TO_THE_FOURTH = 1e12;

    /** Every trait, in the order of a design review. */
    public static final List<Trait> ALL = List.of(
            of("power", "efficiency", "%", Solution::efficiency),
            of("power", "loss", "W", solution -> solution.losses().total()),
            of("power", "string power", "W", solution -> solution.string().power()),
            of("line", "line power", "W", solution -> solution.line().power()),
            new Trait("line", "power factor", "1", Candidate::powerFactor),
            new Trait("line", "harmonic distortion, orders 2 to 39", "%", candidate -> 100 * candidate.distortion()),
            new Trait("light", "percent flicker", "%", Trait::flicker),
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
            new Trait("inductor", "stored energy, peak", "J", Candidate::inductorEnergy),
            new Trait(
                    "inductor",
                    "core area product",
                    "mm4",
                    candidate -> MILLIMETRES_TO_THE_FOURTH * candidate.areaProduct()),
            new Trait(DIMMER, "line voltage that moves no light", "V", Candidate::deadVoltage),
            new Trait(DIMMER, "dead travel of a dimmer", "deg", Candidate::deadTravel),
            new Trait(DIMMER, "least current, 30 to 150 deg", "A", Candidate::heldCurrent),
            new Trait(DIMMER, "dimmer load", "W", Candidate::dimmerLoad),
            new Trait("build", "parts", "", candidate -> candidate.bill().count()),
            new Trait(
                    "build",
                    "board area",
                    "mm2",
                    candidate -> SQUARE_MILLIMETRES * candidate.bill().area()),
            new Trait("build", "cost", "points", candidate -> candidate.bill().cost()),
            new Trait("heat", "hottest part", "degC", candidate -> candidate.temperature(candidate.hottest())),
            new Trait("heat", "life of what goes first", "h", Candidate::life));

    private static Trait of(String group, String name, String unit, ToDoubleFunction<Solution> value) {
        return new Trait(group, name, unit, candidate -> value.applyAsDouble(candidate.solution()));
    }

    /** The traits that matter for a lamp: those of the dimmer only where there is one. */
    public static List<Trait> of(Lamp lamp) {
        return ALL.stream()
                .filter(trait -> lamp.isDimmed() || !trait.group().equals(DIMMER))
                .toList();
    }

    /** The trait of a name; it must be there. */
    public static Trait named(String name) {
        return ALL.stream()
                .filter(trait -> trait.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double flicker(Candidate candidate) {
        return 100 * candidate.solution().string().percentFlicker();
    }

    /** The value of a candidate with its unit. */
    public String text(Candidate candidate) {
        return ValueText.of(value.applyAsDouble(candidate), unit);
    }
}
