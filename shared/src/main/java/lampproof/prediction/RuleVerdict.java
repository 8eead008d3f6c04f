package lampproof.prediction;

/**
 * What a rule says of the lamp, and which number decided.
 *
 * @param subject what is judged
 * @param pass whether the rule is kept
 * @param rule the rule, with its edition
 * @param number the number that decided, with its limit; empty when the rule sets no limit
 */
public record RuleVerdict(String subject, boolean pass, String rule, String number) {

    /** The verdict on one line. */
    public String text() {
        String decided = number.isEmpty() ? "" : "; " + number;
        return subject + ": " + (pass ? "kept" : "not kept") + ", " + rule + decided;
    }
}
