package lampproof.report;

import java.util.List;
import java.util.function.UnaryOperator;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdict;
import lampproof.rule.RuleVerdict.Outcome;

/** The verdicts of rules for a reader. */
public final class RuleText {

    private final Style style;

    /** Verdicts in a style. */
    public RuleText(Style style) {
        this.style = style;
    }

    /** Every verdict on a line; a calculation does not prove compliance, and the heading says so. */
    public String text(List<RuleJudgement> judgements) {
        Grid grid = new Grid("lllll");
        judgements.forEach(judgement -> grid.add(row(judgement), paint(judgement)));
        return style.heading("rules and ratings, by calculation, which is no proof of compliance") + "\n" + grid.text();
    }

    private static List<String> row(RuleJudgement judgement) {
        RuleVerdict predicted = judgement.predicted();
        return List.of(
                word(judgement.decisive()),
                predicted.subject(),
                predicted.number(),
                judgement.simulated().map(shown -> "simulated " + shown.found()).orElse(""),
                predicted.rule());
    }

    /** How many are kept in a word. */
    public static String count(List<RuleJudgement> judgements) {
        long kept = count(judgements, Outcome.KEPT);
        return "rules: " + kept + " of " + (kept + count(judgements, Outcome.NOT_KEPT)) + " kept";
    }

    /** How many are kept, and each that is not; also each that prediction and simulation judge differently. */
    public String summary(List<RuleJudgement> judgements) {
        List<RuleJudgement> told = judgements.stream()
                .filter(judgement ->
                        !judgement.decisive().pass() || !judgement.predicted().pass())
                .toList();
        boolean kept =
                judgements.stream().allMatch(judgement -> judgement.decisive().pass());
        StringBuilder text = new StringBuilder(kept ? style.good(count(judgements)) : style.bad(count(judgements)));
        text.append("\n");
        told.forEach(judgement -> text.append(paint(judgement).apply(line(judgement))));
        return text.toString();
    }

    private static long count(List<RuleJudgement> judgements, Outcome outcome) {
        return judgements.stream()
                .filter(judgement -> judgement.decisive().outcome() == outcome)
                .count();
    }

    /** The simulated value stands first where it decides. */
    private static String line(RuleJudgement judgement) {
        RuleVerdict predicted = judgement.predicted();
        String limit = ", " + predicted.limit();
        String found = judgement
                .simulated()
                .map(shown -> found(predicted, shown, limit))
                .orElse(predicted.found() + limit);
        String remedy = predicted.remedy().isEmpty() || judgement.decisive().pass() ? "" : "; " + predicted.remedy();
        return Paragraph.of(
                word(judgement.decisive()) + "  " + predicted.subject() + " " + found + remedy, "  ", "            ");
    }

    private static String found(RuleVerdict predicted, RuleVerdict shown, String limit) {
        return predicted.pass() == shown.pass()
                ? predicted.found() + " (simulated " + shown.found() + ")" + limit
                : "simulated " + shown.found() + ", " + shown.limit() + "; the prediction is "
                        + predicted.outcome().word() + ", " + predicted.found() + limit;
    }

    private static String word(RuleVerdict verdict) {
        return verdict.pass() ? verdict.outcome().word() : "NOT KEPT";
    }

    private UnaryOperator<String> paint(RuleJudgement judgement) {
        return judgement.decisive().pass() ? UnaryOperator.identity() : style::bad;
    }
}
