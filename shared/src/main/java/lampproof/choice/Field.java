package lampproof.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.design.Law;
import lampproof.design.Smoothing;
import lampproof.design.Topology;
import lampproof.fault.UserFault;
import lampproof.spec.Keyword;

/**
 * Every arrangement of a lamp: both converters, four laws, two ways of smoothing, every count of junctions in the ranges.
 *
 * @param lamp the lamp
 * @param candidates the drivers that work
 * @param refusals the arrangements that do not, with the reason
 */
public record Field(Lamp lamp, List<Candidate> candidates, List<Refusal> refusals) {

    /** Copies the lists. */
    public Field {
        candidates = List.copyOf(candidates);
        refusals = List.copyOf(refusals);
    }

    /**
     * Sizes and solves every arrangement.
     *
     * @param ranges string voltages that may be laid out
     * @param table the classes of the parts
     */
    public static Field of(Lamp lamp, List<StringRange> ranges, PartTable table) {
        List<Outcome> outcomes = arrangements(lamp, ranges).parallelStream()
                .map(arrangement -> Outcome.of(lamp, arrangement, table))
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            outcome.candidate().ifPresent(candidates::add);
            outcome.refusal().ifPresent(refusals::add);
        }
        return new Field(lamp, candidates, refusals);
    }

    private static List<Arrangement> arrangements(Lamp lamp, List<StringRange> ranges) {
        return Arrays.stream(Topology.values())
                .flatMap(topology -> arrangements(lamp, ranges, topology))
                .toList();
    }

    private static Stream<Arrangement> arrangements(Lamp lamp, List<StringRange> ranges, Topology topology) {
        int[] counts = StringRange.counts(lamp, ranges, topology);
        return Arrays.stream(Law.values())
                .flatMap(law -> Arrays.stream(Smoothing.values())
                        .flatMap(smoothing -> Arrays.stream(counts)
                                .mapToObj(count -> Arrangement.of(lamp, topology, law, smoothing, count))));
    }

    /** How many arrangements work, how many do not, and how many are best in their way. */
    public String counts() {
        return candidates.size() + " arrangements work, " + refusals.size() + " do not; " + pareto().size()
                + " are pareto: none of the others is better in one of "
                + String.join(", ", Keyword.words(Criterion.class))
                + " without being worse in another.";
    }

    /** Why arrangements do not work, and how many fail for that reason. */
    public Map<String, Integer> reasons() {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        refusals.forEach(refusal -> reasons.merge(refusal.told(), 1, Integer::sum));
        return reasons;
    }

    /** The candidates that no other one beats in one criterion without losing in another. */
    public List<Candidate> pareto() {
        List<double[]> burdens = candidates.stream().map(Field::burdens).toList();
        List<Candidate> pareto = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            double[] mine = burdens.get(i);
            if (burdens.stream().noneMatch(rival -> dominates(rival, mine))) {
                pareto.add(candidates.get(i));
            }
        }
        return pareto;
    }

    private static double[] burdens(Candidate candidate) {
        return Arrays.stream(Criterion.values())
                .mapToDouble(criterion -> criterion.burden(candidate))
                .toArray();
    }

    private static boolean dominates(double[] one, double[] another) {
        boolean better = false;
        for (int k = 0; k < one.length; k++) {
            if (one[k] > another[k]) {
                return false;
            }
            better |= one[k] < another[k];
        }
        return better;
    }

    /** A candidate, or why there is none. */
    private record Outcome(Optional<Candidate> candidate, Optional<Refusal> refusal) {

        static Outcome of(Lamp lamp, Arrangement arrangement, PartTable table) {
            try {
                return new Outcome(Optional.of(Candidate.of(lamp, arrangement, table)), Optional.empty());
            } catch (UserFault fault) {
                return new Outcome(Optional.empty(), Optional.of(Refusal.of(arrangement, fault)));
            }
        }
    }
}
