package lampproof.rule;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The verdict of a rule on the lamp, and the value that decides.
 *
 * @param subject what is judged
 * @param outcome whether the lamp keeps the rule
 * @param rule the rule, with its edition
 * @param found the value that decided; empty when the rule sets no limit
 * @param limit the limit of that value; empty when there is none
 * @param remedy what would keep the rule; empty when the rule is kept or no remedy is known
 */
public record RuleVerdict(String subject, Outcome outcome, String rule, String found, String limit, String remedy) {

    /** Whether a lamp keeps a rule. */
    public enum Outcome {
        /** The rule is kept. */
        KEPT("kept"),
        /** The rule is not kept. */
        NOT_KEPT("not kept"),
        /** The rule is not kept, but an alternative to it is. */
        NOT_NEEDED("not needed");

        private final String word;

        Outcome(String word) {
            this.word = word;
        }

        /** In a word or two. */
        public String word() {
            return word;
        }
    }

    /** A verdict on a rule without an alternative. */
    public RuleVerdict(String subject, boolean pass, String rule, String found, String limit) {
        this(subject, pass ? Outcome.KEPT : Outcome.NOT_KEPT, rule, found, limit, "");
    }

    /** Whether nothing is wrong: the rule is kept or not needed. */
    public boolean pass() {
        return outcome != Outcome.NOT_KEPT;
    }

    /** The same for a rule whose alternative is kept. */
    RuleVerdict notNeeded() {
        return new RuleVerdict(subject, Outcome.NOT_NEEDED, rule, found, limit, remedy);
    }

    /** The same with what would keep the rule. */
    RuleVerdict remediedBy(String change) {
        return new RuleVerdict(subject, outcome, rule, found, limit, change);
    }

    /** The deciding value with its limit and remedy on one line. */
    public String number() {
        String bounded = Stream.of(found, limit).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        return remedy.isEmpty() ? bounded : bounded + "; " + remedy;
    }

    /** The verdict on one line. */
    public String text() {
        String decided = number().isEmpty() ? "" : "; " + number();
        return subject + ": " + outcome.word() + ", " + rule + decided;
    }
}
