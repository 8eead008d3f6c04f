package lampproof.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.design.Law;
import lampproof.design.Smoothing;
import lampproof.design.Topology;
import lampproof.unit.PlainNumber;

/**
 * The best driver of each converter, compared.
 *
 * <p>Like is compared with like: both finalists smooth the same ripple wherever both converters can, since otherwise their
 * output capacitors would be compared and not the converters.
 *
 * @param space every candidate
 * @param weights how much each criterion counts
 * @param ranking the order of the candidates
 * @param winner the better of the finalists
 * @param rival the best of the other converter; empty when that has no candidate
 */
public record Comparison(
        DesignSpace space, Weights weights, Ranking ranking, Candidate winner, Optional<Candidate> rival) {

    /** The comparison of a design space, or nothing when no arrangement works. */
    public static Optional<Comparison> of(DesignSpace space, Weights weights) {
        if (space.candidates().isEmpty()) {
            return Optional.empty();
        }
        Ranking ranking = new Ranking(space.candidates(), weights);
        List<Candidate> pair = Arrays.stream(Smoothing.values())
                .map(smoothing -> finalists(of(space, smoothing), ranking))
                .filter(finalists -> finalists.size() == 2)
                .min(Comparator.comparing(finalists -> finalists.get(0), ranking.order()))
                .orElseGet(() -> finalists(space.candidates(), ranking));
        return Optional.of(new Comparison(
                space, weights, ranking, pair.get(0), pair.stream().skip(1).findFirst()));
    }

    private static List<Candidate> of(DesignSpace space, Smoothing smoothing) {
        return space.candidates().stream()
                .filter(candidate -> candidate.arrangement().smoothing() == smoothing)
                .toList();
    }

    /** The best of each converter, the better one first. */
    private static List<Candidate> finalists(List<Candidate> candidates, Ranking ranking) {
        return Arrays.stream(Topology.values())
                .flatMap(topology -> candidates.stream()
                        .filter(candidate -> candidate.arrangement().topology() == topology)
                        .min(ranking.order())
                        .stream())
                .sorted(ranking.order())
                .toList();
    }

    /** The finalists, the better one first. */
    public List<Candidate> finalists() {
        return Stream.concat(Stream.of(winner), rival.stream()).toList();
    }

    /** Every candidate in the order of the ranking. */
    public List<Candidate> ranked() {
        return space.candidates().stream().sorted(ranking.order()).toList();
    }

    /** The best candidate of a converter that smooths the other ripple than the finalists do. */
    public Optional<Candidate> otherwiseSmoothed(Topology topology) {
        return space.candidates().stream()
                .filter(candidate -> candidate.arrangement().topology() == topology)
                .filter(candidate -> candidate.arrangement().smoothing()
                        != winner.arrangement().smoothing())
                .min(ranking.order());
    }

    /** The best string of each converter, law and way of smoothing, in the order of the ranking. */
    public List<Candidate> bestOfEach() {
        List<Candidate> best = new ArrayList<>();
        for (Topology topology : Topology.values()) {
            for (Law law : Law.values()) {
                for (Smoothing smoothing : Smoothing.values()) {
                    space.candidates().stream()
                            .filter(candidate -> is(candidate.arrangement(), topology, law, smoothing))
                            .min(ranking.order())
                            .ifPresent(best::add);
                }
            }
        }
        best.sort(ranking.order());
        return best;
    }

    private static boolean is(Arrangement arrangement, Topology topology, Law law, Smoothing smoothing) {
        return arrangement.topology() == topology && arrangement.law() == law && arrangement.smoothing() == smoothing;
    }

    /** The recommendation in words. */
    public String recommendation() {
        String first = "Take the " + winner.arrangement().text() + ", with an index (1: best in everything) of "
                + index(winner);
        return rival.map(other -> first + " against " + index(other) + " of the best "
                        + other.arrangement().topology().word() + "." + highest())
                .orElse(first + "; no other converter can do it.");
    }

    /** Names a candidate that ranks higher than the winner because it smooths another ripple. */
    private String highest() {
        Candidate first = ranked().get(0);
        return first.equals(winner)
                ? ""
                : " The " + first.arrangement().text() + " ranks higher than both, with an index of " + index(first)
                        + ". It is no finalist because it smooths another ripple: the finalists differ in the converter, not in"
                        + " the output capacitor.";
    }

    private String index(Candidate candidate) {
        return PlainNumber.fixed(ranking.index(candidate), 3);
    }
}
