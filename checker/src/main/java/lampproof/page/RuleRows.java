package lampproof.page;

import java.util.List;
import lampproof.rule.RuleVerdict;

/**
 * The verdicts of the rules on a design.
 *
 * @param kept number of rules that are kept or need not be
 * @param rules a row for each rule, those that are not kept first
 */
record RuleRows(long kept, List<Row> rules) {

    /**
     * The verdict of a rule.
     *
     * @param subject what is judged
     * @param kept whether nothing is wrong
     * @param word how the design stands to the rule
     * @param number the value found, with its limit
     * @param rule the rule, with its edition
     */
    record Row(String subject, boolean kept, String word, String number, String rule) {

        static Row of(RuleVerdict verdict) {
            return new Row(
                    PartWords.rating(verdict.subject()),
                    verdict.pass(),
                    verdict.outcome().word(),
                    UnitSigns.signed(verdict.number()),
                    verdict.rule());
        }
    }

    static RuleRows of(List<RuleVerdict> verdicts) {
        return new RuleRows(
                verdicts.stream().filter(RuleVerdict::pass).count(),
                verdicts.stream()
                        .sorted((a, b) -> Boolean.compare(a.pass(), b.pass()))
                        .map(Row::of)
                        .toList());
    }
}
