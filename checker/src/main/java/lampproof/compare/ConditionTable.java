package lampproof.compare;

import static lampproof.prediction.Probe.BRIDGE_CURRENT;
import static lampproof.prediction.Probe.BUS_VOLTAGE;
import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.INDUCTOR_VOLTAGE;
import static lampproof.prediction.Probe.LINE_VOLTAGE;
import static lampproof.prediction.Probe.OUTPUT_VOLTAGE;
import static lampproof.prediction.Probe.STRING_CURRENT;
import static lampproof.prediction.Probe.SWITCH_CURRENT;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import lampproof.design.LedString;
import lampproof.design.Topology;
import lampproof.measure.Capacitance;
import lampproof.measure.Inductance;
import lampproof.measure.OnTime;
import lampproof.measure.SwitchingFrequency;
import lampproof.measure.Trough;
import lampproof.prediction.DeckKind;
import lampproof.quasistatic.Condition;

/** How the conditions that predictions rest on are measured on a deck's table. */
final class ConditionTable {

    private static final Map<Condition, Function<ProbeMeasurements, PendingValue>> PARTS = Map.of(
            Condition.INDUCTANCE,
                    b -> b.add(new Inductance(b.window(), b.channel(INDUCTOR_VOLTAGE), b.channel(INDUCTOR_CURRENT))),
            Condition.OUTPUT_CAPACITANCE, ConditionTable::outputCapacitance,
            Condition.BUS_CAPACITANCE, ConditionTable::busCapacitance);

    private static final Map<Condition, Function<ProbeMeasurements, PendingValue>> CREST = Map.of(
            Condition.BUS_VOLTAGE, b -> b.mean(BUS_VOLTAGE),
            Condition.OUTPUT_VOLTAGE, b -> b.mean(OUTPUT_VOLTAGE),
            Condition.ON_TIME, b -> b.add(new OnTime(b.window(), b.gate())),
            Condition.FREQUENCY, b -> b.add(new SwitchingFrequency(b.window(), b.gate())),
            Condition.TURN_ON_CURRENT, b -> b.add(new Trough(b.window(), b.channel(INDUCTOR_CURRENT))));

    private static final Map<Condition, Function<ProbeMeasurements, PendingValue>> LINE = Map.of(
            Condition.LINE_VOLTAGE, b -> b.rms(LINE_VOLTAGE), Condition.STRING_VOLTAGE, ConditionTable::stringVoltage);

    private ConditionTable() {}

    /** The conditions that a deck shows, each with its recipe. */
    static Map<Condition, Function<ProbeMeasurements, PendingValue>> of(DeckKind deck, boolean setsCurrent) {
        Map<Condition, Function<ProbeMeasurements, PendingValue>> recipes = new EnumMap<>(PARTS);
        switch (deck) {
            case OPEN_STRING, SHORTED_STRING, SURGE, POWER_UP -> recipes.clear();
            case CREST, NOISE -> recipes.putAll(CREST);
            case DIMMED -> recipes.put(Condition.STRING_VOLTAGE, ConditionTable::stringVoltage);
            case MAINS -> {
                recipes.putAll(LINE);
                recipes.put(
                        setsCurrent ? Condition.PEAK_CURRENT : Condition.ON_TIME,
                        setsCurrent ? b -> b.peak(INDUCTOR_CURRENT) : CREST.get(Condition.ON_TIME));
            }
        }
        return recipes;
    }

    /** Mean voltage, converted from the measured to the rated mean current. */
    private static PendingValue stringVoltage(ProbeMeasurements b) {
        LedString string = b.driver().string();
        PendingValue current = b.mean(STRING_CURRENT);
        PendingValue over = () -> current.result().map(mean -> (mean - string.current()) * string.resistance());
        return b.mean(OUTPUT_VOLTAGE).minus(over);
    }

    private static PendingValue outputCapacitance(ProbeMeasurements b) {
        return b.add(new Capacitance(
                b.window(),
                b.channel(OUTPUT_VOLTAGE),
                b.difference(stepUp(b) ? DIODE_CURRENT : INDUCTOR_CURRENT, STRING_CURRENT)));
    }

    private static PendingValue busCapacitance(ProbeMeasurements b) {
        return b.add(new Capacitance(
                b.window(),
                b.channel(BUS_VOLTAGE),
                b.difference(BRIDGE_CURRENT, stepUp(b) ? INDUCTOR_CURRENT : SWITCH_CURRENT)));
    }

    private static boolean stepUp(ProbeMeasurements b) {
        return b.driver().topology() == Topology.STEP_UP;
    }
}
