package lampproof.report;

import java.util.List;
import java.util.function.UnaryOperator;
import lampproof.rule.RuleVerdict;
import lampproof.rule.RuleVerdict.Outcome;

/** What rules say of a design, for a reader. */
public final class RuleText {

    private final Style style;

    /** Verdicts in a style. */
    public RuleText(Style style) {
        this.style = style;
    }

    /** Every verdict on a line; a calculation does not prove compliance, and the heading says so. */
    public String text(List<RuleVerdict> verdicts) {
        return style.heading("rules and ratings, by calculation, which is no proof of compliance") + "\n"
                + grid(verdicts);
    }

    /** How many are kept, and those that are not. */
    public String summary(List<RuleVerdict> verdicts) {
        List<RuleVerdict> broken =
                verdicts.stream().filter(verdict -> !verdict.pass()).toList();
        long kept = verdicts.stream()
                .filter(verdict -> verdict.outcome() == Outcome.KEPT)
                .count();
        String counts = "rules and ratings: " + kept + " kept";
        return broken.isEmpty()
                ? style.good(counts) + "\n"
                : style.bad(counts + ", " + broken.size() + " not kept") + "\n" + grid(broken);
    }

    private String grid(List<RuleVerdict> verdicts) {
        Grid grid = new Grid("llll");
        for (RuleVerdict verdict : verdicts) {
            UnaryOperator<String> paint = verdict.pass() ? UnaryOperator.identity() : style::bad;
            String word = verdict.pass() ? verdict.outcome().word() : "NOT KEPT";
            grid.add(List.of(word, verdict.subject(), verdict.number(), verdict.rule()), paint);
        }
        return grid.text();
    }
}
