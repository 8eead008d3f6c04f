package lampproof.rule;

/**
 * The verdict of a rule on the lamp, and the number that decides.
 *
 * @param subject what is judged
 * @param outcome whether the lamp keeps the rule
 * @param rule the rule, with its edition
 * @param number the number that decided, with its limit; empty when the rule sets no limit
 */
public record RuleVerdict(String subject, Outcome outcome, String rule, String number) {

    /** Whether a lamp keeps a rule. */
    public enum Outcome {
        /** The rule is kept. */
        KEPT("kept"),
        /** The rule is broken. */
        NOT_KEPT("not kept"),
        /** The rule is broken, but another one may be kept in its place, and is. */
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

    /** A verdict on a rule that no other one may replace. */
    public RuleVerdict(String subject, boolean pass, String rule, String number) {
        this(subject, pass ? Outcome.KEPT : Outcome.NOT_KEPT, rule, number);
    }

    /** Whether nothing is wrong: the rule is kept or need not be. */
    public boolean pass() {
        return outcome != Outcome.NOT_KEPT;
    }

    /** The same of a rule in whose place another one is kept. */
    RuleVerdict notNeeded() {
        return new RuleVerdict(subject, Outcome.NOT_NEEDED, rule, number);
    }

    /** The verdict on one line. */
    public String text() {
        String decided = number.isEmpty() ? "" : "; " + number;
        return subject + ": " + outcome.word() + ", " + rule + decided;
    }
}
