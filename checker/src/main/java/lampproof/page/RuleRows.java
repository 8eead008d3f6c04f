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
     * @param subject what is judged; where two rules judge the same, with the end of the rule
     * @param kept whether nothing is wrong
     * @param word how the design stands to the rule
     * @param found the value found and its limit
     * @param number the same with a remedy, where there is one
     * @param rule the rule, with its edition
     */
    record Row(String subject, boolean kept, String word, String found, String number, String rule) {}

    static RuleRows of(List<RuleVerdict> verdicts) {
        return new RuleRows(
                verdicts.stream().filter(RuleVerdict::pass).count(),
                verdicts.stream()
                        .sorted((a, b) -> Boolean.compare(a.pass(), b.pass()))
                        .map(one -> row(one, verdicts))
                        .toList());
    }

    private static Row row(RuleVerdict verdict, List<RuleVerdict> all) {
        String number = UnitSigns.signed(verdict.number());
        return new Row(
                PartWords.rating(subject(verdict, all)),
                verdict.pass(),
                verdict.outcome().word(),
                number.split(";", 2)[0],
                number,
                verdict.rule());
    }

    private static String subject(RuleVerdict verdict, List<RuleVerdict> all) {
        long same = all.stream()
                .filter(one -> one.subject().equals(verdict.subject()))
                .count();
        String rule = verdict.rule();
        boolean named = same == 1 || rule.indexOf(',') < 0;
        return named ? verdict.subject() : verdict.subject() + rule.substring(rule.lastIndexOf(','));
    }
}
