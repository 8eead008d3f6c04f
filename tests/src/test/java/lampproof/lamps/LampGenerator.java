package lampproof.lamps;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import lampproof.design.Driver;
import lampproof.design.Sizing;

/**
 * Makes plausible lamps from seeds: the same seed gives the same lamp everywhere.
 *
 * <p>Ranges are common practice, no source. Capacitors are drawn around what the design chooses.
 */
final class LampGenerator {

    private static final List<Integer> LINES = List.of(100, 120, 230, 240, 277);
    private static final List<Integer> FREQUENCIES = List.of(50, 60);
    private static final List<String> TOPOLOGIES = List.of("step-up", "step-down");
    private static final List<String> LAWS = List.of("boundary", "fixed-duty", "peak-current", "fixed-off-time");
    private static final double MOST_STRING_VOLTAGE = 600;
    private static final double MOST_STRING_CURRENT = 1.5;
    private static final double MOST_OUTPUT_CAPACITANCE = 470e-6;

    private final SplittableRandom random;
    private final Map<String, String> rows = new LinkedHashMap<>();

    private LampGenerator(long seed) {
        random = new SplittableRandom(seed);
    }

    static Lamp of(long seed) {
        return new LampGenerator(seed).lamp(seed);
    }

    private Lamp lamp(long seed) {
        boolean stepUp = driver();
        string(stepUp, line());
        Driver chosen = Sizing.of(new Lamp(seed, table()).spec()).driver();
        double output = chosen.output().capacitance() * (stepUp ? between(0.5, 4) : between(1, 30));
        amount("output.capacitance", Math.min(MOST_OUTPUT_CAPACITANCE, output), "F");
        amount("bus.capacitance", chosen.busCapacitance() * between(0.5, 2), "F");
        amount("filter.capacitance", chosen.filter().capacitance() * between(0.5, 2), "F");
        return new Lamp(seed, table());
    }

    private boolean driver() {
        String topology = any(TOPOLOGIES);
        word("driver.topology", topology);
        word("driver.control", any(LAWS));
        amount("switching.frequency", between(50e3, 120e3), "Hz");
        return topology.equals("step-up");
    }

    /** Draws a line and answers its crest [V]. */
    private double line() {
        int voltage = any(LINES);
        amount("line.voltage", voltage, "V");
        amount("line.frequency", any(FREQUENCIES), "Hz");
        return Math.sqrt(2) * voltage;
    }

    private void string(boolean stepUp, double crest) {
        double share = stepUp ? between(1.1, Math.min(1.7, MOST_STRING_VOLTAGE / crest)) : between(0.05, 0.4);
        double voltage = share * crest;
        double current = Math.min(MOST_STRING_CURRENT, between(3, 25) / voltage);
        amount("string.voltage", voltage, "V");
        amount("string.current", current, "A");
        amount("string.resistance", between(0.05, 0.2) * voltage / current, "Ohm");
    }

    private void word(String name, String word) {
        rows.put(name, word + ",,,");
    }

    private void amount(String name, double value, String unit) {
        rows.put(name, String.format(Locale.ROOT, "%.4g,,%s,", value, unit));
    }

    /** Evenly spread over the logarithm. */
    private double between(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    private <T> T any(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private String table() {
        return rows.entrySet().stream()
                .map(row -> row.getKey() + ",," + row.getValue())
                .collect(Collectors.joining("\n", "quantity,min,typ,max,unit,note\n", "\n"));
    }
}
