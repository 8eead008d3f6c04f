package lampproof.physics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A line current judged against all limits of one set of rules.
 *
 * @param rules the set of rules
 * @param verdicts one verdict per limit; empty when the rules set no limit
 */
public record HarmonicAssessment(String rules, List<HarmonicVerdict> verdicts) {

    /** Keeps a copy of the verdicts. */
    public HarmonicAssessment {
        verdicts = List.copyOf(verdicts);
    }

    /** Whether every limit is kept. */
    public boolean pass() {
        return verdicts.stream().allMatch(HarmonicVerdict::pass);
    }

    /** The verdict with the least margin over its limit; empty when there is no limit. */
    public Optional<HarmonicVerdict> deciding() {
        return verdicts.stream().min(Comparator.comparingDouble(HarmonicVerdict::relativeMargin));
    }

    /** Orders whose limit is passed; 0 means a rule on the whole current. */
    public List<Integer> offendingOrders() {
        return verdicts.stream()
                .filter(verdict -> !verdict.pass())
                .map(HarmonicVerdict::order)
                .distinct()
                .toList();
    }

    /** The assessment with the largest margin, of several of which one must pass. */
    static HarmonicAssessment best(List<HarmonicAssessment> alternatives) {
        return alternatives.stream()
                .max(Comparator.comparingDouble(HarmonicAssessment::leastMargin))
                .orElseThrow();
    }

    private double leastMargin() {
        return deciding().map(HarmonicVerdict::relativeMargin).orElse(Double.POSITIVE_INFINITY);
    }
}
