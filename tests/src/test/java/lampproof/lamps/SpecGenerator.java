package lampproof.lamps;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import lampproof.spec.Quantity;
import lampproof.spec.Vocabulary;

/**
 * Makes specs from seeds: a plausible lamp with one to four further rows anywhere in their documented ranges, the ends and zero
 * included. The same seed gives the same spec everywhere; many are rejected, as they should be.
 */
final class SpecGenerator {

    /** Rows that change no steady state, or that ask for others. */
    private static final Set<String> LEFT_OUT = Set.of("decks", "life", "surge", "tolerance", "dimmer", "derating");

    private static final Set<String> POINTS = Set.of(
            "string.voltage_low",
            "string.current_low",
            "string.voltage_mid",
            "string.current_mid",
            "string.voltage_high",
            "string.current_high",
            "string.point_temperature");

    private static final List<Quantity> QUANTITIES = Vocabulary.entries().stream()
            .filter(Quantity.class::isInstance)
            .map(Quantity.class::cast)
            .filter(quantity -> !LEFT_OUT.contains(quantity.name().split("\\.", 2)[0]))
            .filter(quantity -> !POINTS.contains(quantity.name()))
            .toList();

    private final SplittableRandom random;

    private SpecGenerator(long seed) {
        random = new SplittableRandom(seed);
    }

    static Lamp of(long seed) {
        return new SpecGenerator(seed).varied(LampGenerator.of(seed));
    }

    private Lamp varied(Lamp lamp) {
        String table = lamp.table();
        int rows = random.nextInt(1, 5);
        for (int k = 0; k < rows; k++) {
            Quantity quantity = QUANTITIES.get(random.nextInt(QUANTITIES.size()));
            table = without(quantity.name(), table) + row(quantity);
        }
        return new Lamp(lamp.seed(), table);
    }

    private static String without(String name, String table) {
        return table.lines()
                .filter(line -> !line.startsWith(name + ","))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    private String row(Quantity quantity) {
        return String.format(
                Locale.ROOT,
                "%s,,%.12g,,%s,%n",
                quantity.name(),
                value(quantity.least(), quantity.most()),
                quantity.dimension().unit());
    }

    /** An end of the range, or a value within it: spread over the logarithm where the range allows it. */
    private double value(double least, double most) {
        int draw = random.nextInt(6);
        if (draw == 0) {
            return least;
        }
        if (draw == 1) {
            return most;
        }
        if (most <= 0) {
            return least + (most - least) * random.nextDouble();
        }
        double from = least > 0 ? least : 1e-6 * most;
        return Math.min(most, Math.max(least, from * Math.pow(most / from, random.nextDouble())));
    }
}
