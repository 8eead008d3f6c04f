package lampproof.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.rule.RuleVerdict;

/** The rules that the finalists break, and how many drivers of the design space do not. */
final class BrokenRules {

    private final List<Candidate> finalists;
    private final List<Candidate> candidates;

    private BrokenRules(Comparison comparison) {
        this.finalists = comparison.finalists();
        this.candidates = comparison.space().candidates();
    }

    /** A sentence, without its point, for each rule. */
    static List<String> of(Comparison comparison) {
        BrokenRules rules = new BrokenRules(comparison);
        return rules.finalists.stream()
                .flatMap(finalist -> finalist.verdicts().stream())
                .filter(verdict -> !verdict.pass())
                .map(BrokenRules::name)
                .distinct()
                .map(rules::sentence)
                .toList();
    }

    private String sentence(String rule) {
        long keep = candidates.stream()
                .filter(candidate -> breaches(candidate, rule).findAny().isEmpty())
                .count();
        String breakers = finalists.stream()
                .flatMap(finalist -> breaches(finalist, rule)
                        .map(verdict -> finalist.arrangement().topology().word() + " " + verdict.number()))
                .collect(Collectors.joining("; "));
        return rule + ": " + breakers + ". Kept by " + keep + " of the " + candidates.size() + " drivers that work";
    }

    private static Stream<RuleVerdict> breaches(Candidate candidate, String rule) {
        return candidate.verdicts().stream()
                .filter(verdict -> !verdict.pass())
                .filter(verdict -> rule.equals(name(verdict)));
    }

    private static String name(RuleVerdict verdict) {
        return verdict.subject() + ", " + verdict.rule();
    }
}
