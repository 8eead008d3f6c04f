package lampproof.report;

import java.util.List;
import lampproof.compare.RunVerdict;
import lampproof.prediction.LineCorners;
import lampproof.prediction.PredictedDesign;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdicts;
import lampproof.rule.SimulatedFigures;

/** What a command found about one lamp, for a reader: the answer first, every figure on demand. */
public final class RunText {

    private final String name;
    private final Style style;

    /** The text of a named lamp in a style. */
    public RunText(String name, Style style) {
        this.name = Printable.of(name);
        this.style = style;
    }

    /** A prediction; nothing was simulated. */
    public String predicted(PredictedDesign predicted, Verbosity verbosity) {
        List<RuleJudgement> rules = RuleVerdicts.of(predicted.corners(), SimulatedFigures.NONE);
        if (verbosity == Verbosity.QUIET) {
            return name + ": " + RuleText.count(rules) + "\n";
        }
        String answer =
                headline(predicted.corners(), SimulatedFigures.NONE) + "\n" + new RuleText(style).summary(rules);
        return verbosity == Verbosity.ANSWER
                ? answer
                : answer + "\n" + new PredictionText(style).text(predicted.predictions()) + "\n"
                        + new RuleText(style).text(rules);
    }

    /** A checked run. */
    public String checked(RunVerdict verdict, LineCorners corners, List<RuleJudgement> rules, Verbosity verbosity) {
        if (verbosity == Verbosity.QUIET) {
            return name + ": " + VerdictSummary.sentence(verdict) + "; " + RuleText.count(rules) + "\n";
        }
        String answer = headline(corners, verdict::simulated) + "\n"
                + new RuleText(style).summary(rules) + "\n"
                + new VerdictSummary(style).text(verdict);
        return verbosity == Verbosity.ANSWER
                ? answer
                : answer + new VerdictText(style).text(verdict) + "\n" + new RuleText(style).text(rules);
    }

    /** Rules and verdict of a lamp whose headline stands elsewhere. */
    public String verdicts(RunVerdict verdict, List<RuleJudgement> rules) {
        return style.heading(name) + ", " + new RuleText(style).summary(rules)
                + new VerdictSummary(style).text(verdict);
    }

    private String headline(LineCorners corners, SimulatedFigures simulated) {
        return new HeadlineText(style).text(name, Headline.of(corners, simulated));
    }
}
