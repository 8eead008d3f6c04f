package lampproof.page;

import java.util.List;
import lampproof.choice.Candidate;
import lampproof.rule.RuleJudgement;

/**
 * What rules say of the finalists.
 *
 * @param rules a row for each driver and rule
 */
record FinalistRules(List<Row> rules) {

    /**
     * What a rule says of a driver.
     *
     * @param finalist name of the driver
     * @param verdict what it says
     */
    record Row(String finalist, RuleRows.Row verdict) {}

    static FinalistRules of(List<Candidate> finalists) {
        return new FinalistRules(
                finalists.stream().flatMap(one -> rows(one).stream()).toList());
    }

    private static List<Row> rows(Candidate finalist) {
        String name = finalist.arrangement().topology().word();
        return RuleRows.of(finalist.verdicts().stream()
                        .map(RuleJudgement::predicted)
                        .toList())
                .rules()
                .stream()
                .map(row -> new Row(name, row))
                .toList();
    }
}
