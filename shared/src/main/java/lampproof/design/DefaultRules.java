package lampproof.design;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.spec.Amount;
import lampproof.spec.Entry;
import lampproof.spec.Keyword;
import lampproof.spec.Origin;
import lampproof.spec.Setting;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.spec.Word;

/**
 * The rule that sets a row if the spec does not give it.
 *
 * <p>The rules are those that {@link Sizing} writes beside each value: one lamp is sized with every converter, control law
 * and option, and the rules are collected. Rows that no sizing sets have a rule of their own here.
 */
public final class DefaultRules {

    private static final String NO_EFFECT = "none: this version accepts the row but does not use it";
    private static final String NO_MODEL = "none: the decks use the lampproof model of the part";
    private static final String POINTS =
            "none: give low and high points in place of string.voltage and string.resistance";

    private static final Map<String, String> OTHER_RULES = Map.ofEntries(
            Map.entry("switching.on_time", NO_EFFECT),
            Map.entry("sense.reference", NO_EFFECT),
            Map.entry("bias.voltage", NO_EFFECT),
            Map.entry("decks.corners", NO_EFFECT),
            Map.entry("decks.cycles", NO_EFFECT),
            Map.entry("switch.model", NO_MODEL),
            Map.entry("diode.model", NO_MODEL),
            Map.entry("inductor.model", NO_MODEL),
            Map.entry("string.model", NO_MODEL),
            Map.entry("string.voltage_low", POINTS),
            Map.entry("string.current_low", POINTS),
            Map.entry("string.voltage_high", POINTS),
            Map.entry("string.current_high", POINTS),
            Map.entry("string.voltage_mid", "none: two points make a line"),
            Map.entry("string.current_mid", "none: two points make a line"),
            Map.entry("string.point_temperature", "25 degC"),
            Map.entry("diode.capacitance", "part of switch.capacitance"),
            Map.entry("output.capacitance_left", "100 %: the capacitance does not depend on the voltage"),
            Map.entry("decks.time_limit", "the time limit of the command: --time-limit"),
            Map.entry("tolerance.mean", "the tolerance of each figure: lampproof figures NAME"),
            Map.entry("tolerance.peak", "the tolerance of each figure: lampproof figures NAME"));

    private static final Map<String, Set<String>> SIZING_RULES = sizingRules();

    private DefaultRules() {}

    /** The rules of a row, more than one where they depend on other rows; empty if every spec must give the row. */
    public static List<String> of(Entry entry) {
        String other = OTHER_RULES.getOrDefault(entry.name(), OTHER_RULES.get("tolerance.mean"));
        return Vocabulary.required().contains(entry.name())
                ? List.of()
                : List.copyOf(SIZING_RULES.getOrDefault(entry.name(), Set.of(other)));
    }

    private static Map<String, Set<String>> sizingRules() {
        Map<String, Set<String>> rules = new LinkedHashMap<>();
        trials().flatMap(trial -> Sizing.of(trial).values().rows().stream())
                .filter(row -> row.origin() == Origin.DEFAULT)
                .forEach(row -> rules.computeIfAbsent(row.name(), name -> new LinkedHashSet<>())
                        .add(row.note()));
        return rules;
    }

    private static Stream<Spec> trials() {
        Stream<List<SpecRow>> options = Stream.of(Topology.values())
                .flatMap(topology -> Stream.of(Law.values())
                        .flatMap(law -> Stream.of(
                                trial(topology, law, List.of()),
                                trial(topology, law, options()),
                                trial(topology, law, ceramic()))));
        return Stream.concat(Stream.of(lamp(Topology.STEP_UP)), options).map(Spec::of);
    }

    private static List<SpecRow> trial(Topology topology, Law law, List<SpecRow> options) {
        return Stream.of(lamp(topology), List.of(row("driver.control", law)), options)
                .flatMap(List::stream)
                .toList();
    }

    private static List<SpecRow> lamp(Topology topology) {
        boolean stepUp = topology == Topology.STEP_UP;
        return List.of(
                row("driver.topology", topology),
                row("line.voltage", 230),
                row("line.frequency", 50),
                row("string.voltage", stepUp ? 420 : 33),
                row("string.current", stepUp ? 0.02 : 0.2));
    }

    /** Rows on which the rules of others depend. */
    private static List<SpecRow> options() {
        return List.of(
                row("dimmer.edge", Dimming.Edge.LEADING),
                row("surge.wave", Surge.Wave.COMBINATION),
                given("diode.recovery", new Word("soft")),
                row("diode.capacitance", 10e-12),
                row("output.capacitance_left", 0.5));
    }

    private static List<SpecRow> ceramic() {
        return List.of(row("output.nominal_capacitance", 1e-6), row("output.capacitance_left", 0.5));
    }

    private static SpecRow row(String name, double value) {
        return given(name, Amount.of(value));
    }

    private static SpecRow row(String name, Keyword word) {
        return given(name, new Word(word.word()));
    }

    private static SpecRow given(String name, Setting setting) {
        return new SpecRow(name, setting, Origin.GIVEN, "", 0);
    }
}
