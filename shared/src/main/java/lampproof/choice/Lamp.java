package lampproof.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampproof.design.Dimming.Edge;
import lampproof.design.Law;
import lampproof.design.Smoothing;
import lampproof.design.StringPoints;
import lampproof.design.Topology;
import lampproof.spec.Amount;
import lampproof.spec.Keyword;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import lampproof.spec.Word;

/**
 * The requirements of a lamp, whichever converter it gets: line, light power, dimmer, housing.
 *
 * @param rows the rows of the spec that hold for every candidate
 * @param setAside names of the rows that belong to one design only and are chosen anew for each candidate
 * @param power string power at which the LEDs give their light [W]
 * @param junctionVoltage voltage of one LED junction at its current [V]
 * @param softness dynamic resistance of the string times its current over its voltage [-]
 * @param line rms line voltage
 * @param junctionSlope change of the voltage of one junction with temperature [V/K]; empty for the usual one
 */
public record Lamp(
        List<SpecRow> rows,
        List<String> setAside,
        double power,
        double junctionVoltage,
        double softness,
        Amount line,
        Optional<Double> junctionSlope) {

    private static final double USUAL_JUNCTION = 3;
    private static final double USUAL_SOFTNESS = 0.1;
    private static final Set<String> GROUPS =
            Set.of("line", "dimmer", "bleeder", "bridge", "bias", "ambient", "thermal", "life", "decks", "tolerance");
    private static final Set<String> NAMES =
            Set.of("switching.frequency", "string.light_share", "string.temperature_rating");
    private static final Set<String> STRING = Set.of(
            "string.voltage",
            "string.current",
            "string.count",
            "string.resistance",
            "string.temperature_slope",
            "string.voltage_low",
            "string.current_low",
            "string.voltage_mid",
            "string.current_mid",
            "string.voltage_high",
            "string.current_high",
            "string.point_temperature");

    /** Copies the lists. */
    public Lamp {
        rows = List.copyOf(rows);
        setAside = List.copyOf(setAside);
    }

    /**
     * The lamp of a spec: its light power is string voltage times string current, and its LEDs may be strung anew.
     *
     * @param given the spec, which must hold line and string
     */
    public static Lamp of(Spec given) {
        Spec spec = StringPoints.fitted(given);
        double voltage = typical(spec, "string.voltage").orElseThrow();
        double current = typical(spec, "string.current").orElseThrow();
        double count = typical(spec, "string.count").orElse(Math.max(1, Math.rint(voltage / USUAL_JUNCTION)));
        return new Lamp(
                spec.rows().stream().filter(row -> isKept(row.name())).toList(),
                spec.names().stream()
                        .filter(name -> !isKept(name) && !STRING.contains(name))
                        .toList(),
                voltage * current,
                typical(spec, "string.count").isPresent() ? voltage / count : USUAL_JUNCTION,
                typical(spec, "string.resistance")
                        .map(resistance -> resistance * current / voltage)
                        .orElse(USUAL_SOFTNESS),
                spec.amount("line.voltage").orElseThrow(),
                typical(spec, "string.temperature_slope").map(slope -> slope / count));
    }

    private static Optional<Double> typical(Spec spec, String name) {
        return spec.amount(name).map(Amount::typical);
    }

    private static boolean isKept(String name) {
        boolean ofCapacitor = name.startsWith("life.capacitor_") || name.equals("thermal.output");
        return NAMES.contains(name) || (GROUPS.contains(name.split("\\.", 2)[0]) && !ofCapacitor);
    }

    /** The same lamp with another light power [W]. */
    public Lamp withPower(double other) {
        return new Lamp(rows, setAside, other, junctionVoltage, softness, line, junctionSlope);
    }

    /** The same lamp with another value [unit of its dimension] of a row that holds for every candidate. */
    public Lamp with(String name, double value) {
        List<SpecRow> changed = new ArrayList<>(
                rows.stream().filter(row -> !row.name().equals(name)).toList());
        changed.add(SpecRow.filledIn(name, Amount.of(value), "changed to find a lamp that works"));
        return new Lamp(changed, setAside, power, junctionVoltage, softness, line, junctionSlope);
    }

    /** The value of a row that holds for every candidate [unit of its dimension]. */
    Optional<Double> typical(String name) {
        return typical(Spec.of(rows), name);
    }

    /** Crest of the lowest line [V]. */
    double lowestCrest() {
        return Math.sqrt(2) * line.least();
    }

    /** Crest of the highest line [V]. */
    double highestCrest() {
        return Math.sqrt(2) * line.most();
    }

    /** Whether a wall dimmer is named. */
    public boolean isDimmed() {
        return edge() != Edge.NONE;
    }

    /** Whether the dimmer has a triac, which goes out below its holding current. */
    boolean hasTriac() {
        return edge() == Edge.LEADING;
    }

    private Edge edge() {
        return Spec.of(rows).keyword("dimmer.edge", Edge.class).orElse(Edge.NONE);
    }

    /** Holding current of the dimmer [A]. */
    double holdingCurrent() {
        return hasTriac() ? typical("dimmer.holding_current").orElse(30e-3) : 0;
    }

    /** Whether the spec says itself which load the dimmer gets. */
    boolean hasOwnLoad() {
        return rows.stream().anyMatch(row -> row.name().startsWith("bleeder."));
    }

    /** The arrangement of a converter and so many junctions in series. */
    Arrangement arrangement(Topology topology, Law law, Smoothing smoothing, int junctions) {
        double string = Arrangement.fourDigits(junctions * junctionVoltage);
        return new Arrangement(topology, law, smoothing, junctions, string, Arrangement.fourDigits(power / string));
    }

    /** The spec of a candidate, as far as the arrangement and some more rows decide it. */
    Spec spec(Arrangement arrangement, List<SpecRow> more) {
        List<SpecRow> all = new ArrayList<>(rows);
        all.add(word("driver.topology", arrangement.topology()));
        all.add(word("driver.control", arrangement.law()));
        all.add(word("output.smoothing", arrangement.smoothing()));
        all.add(amount("string.voltage", arrangement.voltage(), "junctions in series"));
        all.add(amount("string.current", arrangement.current(), "gives the light power at that voltage"));
        all.add(amount(
                "string.resistance",
                Arrangement.fourDigits(softness * arrangement.voltage() / arrangement.current()),
                "the LEDs as soft as in the spec"));
        all.add(amount("string.count", arrangement.junctions(), "laid out"));
        junctionSlope.ifPresent(slope ->
                all.add(amount("string.temperature_slope", slope * arrangement.junctions(), "that of each LED")));
        all.addAll(more);
        return Spec.of(all);
    }

    static SpecRow amount(String name, double value, String rule) {
        return SpecRow.filledIn(name, Amount.of(value), rule);
    }

    private static SpecRow word(String name, Keyword word) {
        return SpecRow.filledIn(name, new Word(word.word()), "laid out");
    }

    /** Whether a converter can carry a string of a voltage [V] on every line of the lamp. */
    boolean carries(Topology topology, double voltage) {
        return topology == Topology.STEP_UP ? voltage >= 1.05 * highestCrest() : voltage <= 0.95 * lowestCrest();
    }
}
