package lampproof.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.prediction.Prediction;
import lampproof.quasistatic.Condition;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/**
 * Why a figure differs: the substitutions that close the gap, the one that closes most of it first, each with its share.
 */
final class Explanation {

    /** A substitution that closes less of the gap than this is not reported [-]. */
    private static final double WORTH_A_WORD = 0.1;

    /** A share that misses the gap by less than this closes it [-]. */
    private static final double ALL = 0.05;

    /** Figures that are the condition itself, which would be no explanation. */
    private static final Map<Condition, Set<String>> SAME = Map.of(
            Condition.ON_TIME, Set.of("switching.on_time"),
            Condition.FREQUENCY, Set.of("switching.frequency.crest"),
            Condition.PEAK_CURRENT, Set.of("inductor.current.peak", "switch.current.peak", "diode.current.peak"));

    private final Alternatives alternatives;
    private final List<Substitution> candidates;
    private final Prediction prediction;
    private final double gap;

    /** An applied substitution and how much of the gap it closed. */
    private record Share(Substitution substitution, double closed) {}

    private Explanation(
            Alternatives alternatives, List<Substitution> candidates, Prediction prediction, double simulated) {
        this.alternatives = alternatives;
        this.candidates = candidates;
        this.prediction = prediction;
        this.gap = simulated - prediction.value();
    }

    /**
     * The cause of the difference between simulated and predicted value, in a sentence.
     *
     * @param alternatives the predictions under other conditions
     * @param candidates every condition that was measured
     */
    static String of(
            Alternatives alternatives, List<Substitution> candidates, Prediction prediction, double simulated) {
        List<Substitution> others = candidates.stream()
                .filter(each -> !SAME.getOrDefault(each.condition(), Set.of())
                        .contains(prediction.figure().name()))
                .toList();
        return new Explanation(alternatives, others, prediction, simulated).sentence();
    }

    private String sentence() {
        List<Share> shares = shares();
        if (shares.isEmpty()) {
            return unexplained();
        }
        String text = shares.stream().map(this::text).collect(Collectors.joining("; "));
        double rest = gap - shares.stream().mapToDouble(Share::closed).sum();
        if (Math.abs(rest) < WORTH_A_WORD * Math.abs(gap)) {
            return text;
        }
        return text
                + (opposes(rest)
                        ? "; this is too much by " + amount(-rest)
                        : "; " + amount(rest) + " is not explained");
    }

    private String text(Share share) {
        String what = share.substitution().text();
        if (opposes(share.closed())) {
            return amount(-share.closed()) + " is compensated by " + what;
        }
        boolean all = Math.abs(gap - share.closed()) < ALL * Math.abs(gap);
        return (all ? "all" : number(share.closed())) + " of the " + amount(gap) + " comes from " + what;
    }

    private boolean opposes(double difference) {
        return difference * gap < 0;
    }

    private String unexplained() {
        String tried = candidates.stream().map(each -> each.condition().words()).collect(Collectors.joining(", "));
        return tried.isEmpty()
                ? "no measured condition explains it"
                : "none of " + tried + " explains it; another value in the circuit may differ from the spec";
    }

    /** Applies the substitution that brings the prediction nearest, then the next one in addition. */
    private List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        List<Substitution> taken = new ArrayList<>();
        double rest = gap;
        Optional<Substitution> next = nearest(taken, rest);
        while (next.isPresent()) {
            taken.add(next.get());
            double after = gap - alternatives.shift(figure(), taken);
            shares.add(new Share(next.get(), rest - after));
            rest = after;
            next = nearest(taken, rest);
        }
        return shares;
    }

    private Optional<Substitution> nearest(List<Substitution> taken, double rest) {
        double worth = Math.abs(rest) - WORTH_A_WORD * Math.abs(gap);
        return candidates.stream()
                .filter(each -> !taken.contains(each))
                .filter(each -> left(taken, each) < worth)
                .min(Comparator.comparingDouble(each -> left(taken, each)));
    }

    private double left(List<Substitution> taken, Substitution next) {
        List<Substitution> all = new ArrayList<>(taken);
        all.add(next);
        return Math.abs(gap - alternatives.shift(figure(), all));
    }

    private String figure() {
        return prediction.figure().name();
    }

    /** In per cent of the prediction, as the deviation is; in the unit of the figure if the prediction is near zero. */
    private String amount(double difference) {
        return relative()
                ? number(difference) + " %"
                : Engineering.rounded(difference, prediction.figure().unit());
    }

    private String number(double difference) {
        return relative()
                ? PlainNumber.fixed(100 * difference / Math.abs(prediction.value()) * Math.signum(gap), 1)
                : Engineering.rounded(difference, prediction.figure().unit());
    }

    private boolean relative() {
        return Math.abs(prediction.value()) > prediction.tolerance().around(prediction.value());
    }
}
