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
 * @param rejections the arrangements that do not, with the reason
 */
public record DesignSpace(Lamp lamp, List<Candidate> candidates, List<Rejection> rejections) {

    /** Copies the lists. */
    public DesignSpace {
        candidates = List.copyOf(candidates);
        rejections = List.copyOf(rejections);
    }

    /**
     * Sizes and solves every arrangement.
     *
     * @param ranges string voltages that may be laid out
     * @param table the classes of the parts
     */
    public static DesignSpace of(Lamp lamp, List<StringRange> ranges, PartTable table) {
        List<Outcome> outcomes = arrangements(lamp, ranges).parallelStream()
                .map(arrangement -> Outcome.of(lamp, arrangement, table))
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        List<Rejection> rejections = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            outcome.candidate().ifPresent(candidates::add);
            outcome.rejection().ifPresent(rejections::add);
        }
        return new DesignSpace(lamp, candidates, rejections);
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
                                .mapToObj(count -> lamp.arrangement(topology, law, smoothing, count))));
    }

    /** How many arrangements work, how many do not, and how many are best in their way. */
    public String counts() {
        return candidates.size() + " arrangements work, " + rejections.size() + " do not; " + pareto().size()
                + " are pareto: none of the others is better in one of "
                + String.join(", ", Keyword.words(Criterion.class))
                + " without being worse in another.";
    }

    /** Why arrangements do not work, and how many fail for that reason. */
    public Map<String, Integer> reasons() {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        rejections.forEach(rejection -> reasons.merge(rejection.text(), 1, Integer::sum));
        return reasons;
    }

    /** The candidates that no other one beats in one criterion without losing in another. */
    public List<Candidate> pareto() {
        List<double[]> burdens = candidates.stream().map(DesignSpace::burdens).toList();
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
    private record Outcome(Optional<Candidate> candidate, Optional<Rejection> rejection) {

        static Outcome of(Lamp lamp, Arrangement arrangement, PartTable table) {
            try {
                return new Outcome(Optional.of(Candidate.of(lamp, arrangement, table)), Optional.empty());
            } catch (UserFault fault) {
                return new Outcome(Optional.empty(), Optional.of(Rejection.of(arrangement, fault)));
            }
        }
    }
}
