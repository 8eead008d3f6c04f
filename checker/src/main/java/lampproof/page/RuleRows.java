package lampproof.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdict;
import lampproof.rule.RuleVerdict.Outcome;

/**
 * The verdicts of the rules on a design.
 *
 * @param kept number of rules that are kept
 * @param judged number of rules that are kept or not kept; a rule whose alternative is kept is neither
 * @param broken the rows of the rules that are not kept
 * @param rules a row for each rule, those that are not kept first
 */
record RuleRows(long kept, long judged, List<Row> broken, List<Row> rules) {

    /**
     * The verdict of a rule.
     *
     * @param subject what is judged; where two rules judge the same, with the end of the rule
     * @param kept whether nothing is wrong
     * @param word how the design stands to the rule
     * @param found the predicted value and its limit
     * @param simulated the simulated value; empty when no deck shows it
     * @param number found with a remedy, where there is one
     * @param rule the rule, with its edition
     */
    record Row(String subject, boolean kept, String word, String found, String simulated, String number, String rule) {}

    static RuleRows of(List<RuleJudgement> judgements) {
        List<RuleVerdict> decisive = RuleJudgement.decisive(judgements);
        long kept = count(decisive, Outcome.KEPT);
        List<Row> rows = judgements.stream()
                .sorted((a, b) ->
                        Boolean.compare(a.decisive().pass(), b.decisive().pass()))
                .map(one -> row(one, decisive))
                .toList();
        return new RuleRows(
                kept,
                kept + count(decisive, Outcome.NOT_KEPT),
                rows.stream().filter(row -> !row.kept()).toList(),
                rows);
    }

    private static long count(List<RuleVerdict> verdicts, Outcome outcome) {
        return verdicts.stream().filter(verdict -> verdict.outcome() == outcome).count();
    }

    private static Row row(RuleJudgement judgement, List<RuleVerdict> all) {
        RuleVerdict predicted = judgement.predicted();
        return new Row(
                PartWords.rating(subject(predicted, all)),
                judgement.decisive().pass(),
                judgement.decisive().outcome().word(),
                UnitSigns.signed(Stream.of(predicted.found(), predicted.limit())
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(", "))),
                UnitSigns.signed(judgement.simulated().map(RuleVerdict::found).orElse("")),
                UnitSigns.signed(predicted.number()),
                predicted.rule());
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
