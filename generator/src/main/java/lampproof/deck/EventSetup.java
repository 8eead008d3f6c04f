package lampproof.deck;

import java.util.LinkedHashMap;
import java.util.Map;
import lampproof.design.Driver;
import lampproof.design.Surge;
import lampproof.event.EventResult;
import lampproof.physics.CombinationWaveGenerator;
import lampproof.physics.RingWave;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;

/** A lamp in an event: from the predicted steady state some cycles before, or without charge when the line is switched on. */
record EventSetup(DeckKind kind, Solution solution) implements DeckSetup {

    private static final double STEPS_PER_ON_TIME = 40;
    private static final double LONGEST_SURGE_STEP = 40e-9;
    private static final double EDGE = 20e-9;

    private static final Map<String, Object> NOTHING_CHARGED =
            Map.of("filterCurrent", 0, "filterVoltage", 0, "busVoltage", 0, "outputVoltage", 0, "inductorCurrent", 0);

    @Override
    public double step() {
        double usual = solution.crestStage().pace().onTime() / STEPS_PER_ON_TIME;
        return switch (kind) {
            case SURGE -> Math.min(usual, LONGEST_SURGE_STEP);
            case SHORTED_STRING -> Math.min(usual, shortestOnTime() / 12);
            default -> usual;
        };
    }

    @Override
    public double stop() {
        return result().stop();
    }

    @Override
    public Map<String, Object> start() {
        if (kind == DeckKind.POWER_UP) {
            return NOTHING_CHARGED;
        }
        AnglePoint point = kind == DeckKind.SURGE
                ? solution.events().surgePoint()
                : solution.operation().crest();
        double series = driver().line().resistance() + driver().filter().seriesResistance();
        double current = point.cycle() == null ? 0 : point.cycle().startCurrent();
        return Map.of(
                "filterCurrent", point.lineCurrent(),
                "filterVoltage", point.lineVoltage() - series * point.lineCurrent(),
                "busVoltage", point.busVoltage(),
                "outputVoltage", point.outputVoltage(),
                "inductorCurrent", current,
                "lineVoltage", point.lineVoltage());
    }

    @Override
    public Map<String, Object> event() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("instant", result().instant());
        values.put("edge", EDGE);
        values.put("after", result().instant() + EDGE);
        values.put("lineDegrees", Math.toDegrees(angle()));
        values.put("shortResistance", driver().exposure().shortResistance());
        values.putAll(surge(driver().exposure().surge()));
        return values;
    }

    private static Map<String, Object> surge(Surge surge) {
        return Map.of(
                "wave",
                surge.wave().word(),
                "ring",
                Map.of(
                        "amplitude",
                        RingWave.AMPLITUDE * surge.voltage(),
                        "front",
                        RingWave.FRONT,
                        "decay",
                        RingWave.DECAY,
                        "angularFrequency",
                        2 * Math.PI * RingWave.FREQUENCY),
                "impedance",
                surge.impedance(),
                "charge",
                CombinationWaveGenerator.chargingVoltage(surge.voltage()),
                "generator",
                Map.of(
                        "capacitance", CombinationWaveGenerator.CAPACITANCE,
                        "inductance", CombinationWaveGenerator.INDUCTANCE,
                        "discharge", CombinationWaveGenerator.DISCHARGE_RESISTANCE,
                        "series", CombinationWaveGenerator.SERIES_RESISTANCE,
                        "output", CombinationWaveGenerator.OUTPUT_RESISTANCE,
                        "coupling", CombinationWaveGenerator.COUPLING_CAPACITANCE,
                        "choke", CombinationWaveGenerator.DECOUPLING_INDUCTANCE));
    }

    private EventResult result() {
        return solution.event(kind);
    }

    private double angle() {
        return switch (kind) {
            case SURGE -> solution.events().surgePoint().angle();
            case POWER_UP -> driver().exposure().powerUpAngle();
            default -> solution.operation().crest().angle();
        };
    }

    private double shortestOnTime() {
        return driver().exposure().blanking() + driver().control().delay();
    }

    private Driver driver() {
        return solution.driver();
    }
}
