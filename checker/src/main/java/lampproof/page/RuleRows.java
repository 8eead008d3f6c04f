package lampproof.page;

import java.util.List;
import lampproof.rule.RuleVerdict;

/**
 * What rules say of a design.
 *
 * @param rules a row for each rule
 */
record RuleRows(List<Row> rules) {

    /**
     * What a rule says.
     *
     * @param subject what is judged
     * @param kept whether nothing is wrong
     * @param word how the design stands to the rule
     * @param number the number that decides
     * @param rule the rule, with its edition
     */
    record Row(String subject, boolean kept, String word, String number, String rule) {

        static Row of(RuleVerdict verdict) {
            return new Row(
                    verdict.subject(), verdict.pass(), verdict.outcome().word(), verdict.number(), verdict.rule());
        }
    }

    /** The rules that are not kept first. */
    static RuleRows of(List<RuleVerdict> verdicts) {
        return new RuleRows(verdicts.stream()
                .sorted((a, b) -> Boolean.compare(a.pass(), b.pass()))
                .map(Row::of)
                .toList());
    }
}
