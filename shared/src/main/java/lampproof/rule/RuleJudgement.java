package lampproof.rule;

import java.util.List;
import java.util.Optional;

/**
 * The verdict of a rule on the prediction, and beside it the verdict on the simulation where a deck shows what the rule is
 * about.
 *
 * @param predicted the verdict on the prediction
 * @param simulated the verdict on the simulation; empty when no deck shows it
 */
public record RuleJudgement(RuleVerdict predicted, Optional<RuleVerdict> simulated) {

    /** A verdict on the prediction alone. */
    public static RuleJudgement predicted(RuleVerdict verdict) {
        return new RuleJudgement(verdict, Optional.empty());
    }

    /** The verdict that counts: on the simulated circuit, which may have been edited, where there is one. */
    public RuleVerdict decisive() {
        return simulated.orElse(predicted);
    }

    /** The verdicts that count. */
    public static List<RuleVerdict> decisive(List<RuleJudgement> judgements) {
        return judgements.stream().map(RuleJudgement::decisive).toList();
    }
}
