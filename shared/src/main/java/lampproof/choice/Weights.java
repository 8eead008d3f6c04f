package lampproof.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.spec.Keyword;
import lampproof.unit.Engineering;

/**
 * How much each criterion counts.
 *
 * @param values one weight a criterion, 0 to {@value #GREATEST} [-]
 */
public record Weights(Map<Criterion, Double> values) {

    /** Every criterion counts the same. */
    public static final Weights EQUAL = new Weights(Map.of());

    private static final String OPTION = "--weights";
    private static final double GREATEST = 100;

    /** Fills in one for what is not named. */
    public Weights {
        Map<Criterion, Double> all = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            all.put(criterion, values.getOrDefault(criterion, 1.0));
        }
        values = Map.copyOf(all);
    }

    /**
     * Reads weights such as {@code efficiency=2,cost=0}; what is not named counts one.
     *
     * @throws UserFault with every finding
     */
    public static Weights read(String text) {
        Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
        List<Finding> findings = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String[] pair = part.split("=", -1);
            Optional<Criterion> criterion = criterion(pair[0].strip(), findings);
            double weight = pair.length == 2 ? weight(pair[1]) : Double.NaN;
            if (!(weight >= 0 && weight <= GREATEST)) {
                findings.add(new Finding("a weight is a number", OPTION, part, "0 to 100", "such as efficiency=2"));
            } else {
                criterion.ifPresent(one -> values.put(one, weight));
            }
        }
        Weights weights = new Weights(values);
        if (findings.isEmpty() && weights.values.values().stream().allMatch(weight -> weight == 0)) {
            findings.add(Finding.of("no criterion counts", OPTION, "give one of them a weight above 0"));
        }
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
        return weights;
    }

    private static Optional<Criterion> criterion(String word, List<Finding> findings) {
        Optional<Criterion> known = Keyword.of(Criterion.class, word);
        if (known.isEmpty()) {
            List<String> words = Keyword.words(Criterion.class);
            findings.add(new Finding(
                    "this criterion is not known",
                    OPTION,
                    word,
                    String.join(", ", words),
                    NearestName.question(word, words)));
        }
        return known;
    }

    private static double weight(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** How much a criterion counts [-]. */
    public double of(Criterion criterion) {
        return values.get(criterion);
    }

    /** The weights as they are given on the command line. */
    public String text() {
        return Arrays.stream(Criterion.values())
                .map(criterion -> criterion.word() + "=" + Engineering.upTo(4).text(of(criterion), "1"))
                .collect(Collectors.joining(","));
    }
}
