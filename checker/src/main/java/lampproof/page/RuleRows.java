package lampproof.page;

import java.util.List;
import java.util.Map;
import lampproof.rule.RuleVerdict;

/** What rules say of a design as rows, those that are not kept first. */
final class RuleRows {

    private RuleRows() {}

    static List<Map<String, Object>> of(List<RuleVerdict> verdicts) {
        return verdicts.stream()
                .sorted((a, b) -> Boolean.compare(a.pass(), b.pass()))
                .map(RuleRows::row)
                .toList();
    }

    private static Map<String, Object> row(RuleVerdict verdict) {
        return Map.of(
                "subject",
                verdict.subject(),
                "kept",
                verdict.pass(),
                "word",
                verdict.outcome().word(),
                "number",
                verdict.number(),
                "rule",
                verdict.rule());
    }
}
