package lampproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;
import lampproof.choice.Difference;
import lampproof.choice.Differences;
import lampproof.choice.Sensitivity;
import lampproof.choice.WeightVariation;
import lampproof.design.Topology;
import lampproof.prediction.LineCorners;
import lampproof.rule.RuleVerdict;
import lampproof.rule.SimulatedFigures;
import lampproof.unit.Engineering;

/** A comparison for a reader: the recommendation, the finalists side by side, why they differ, the design space, what moves them. */
public final class ComparisonText {

    private static final int STRONGEST = 4;
    private static final int MOST_REASONS = 5;
    private static final Engineering FOUR_DIGITS = Engineering.digits(4).inAscii();

    private final Style style;

    /** Comparisons in a style. */
    public ComparisonText(Style style) {
        this.style = style;
    }

    /** The comparison as lines: the recommendation and both finalists; with everything on demand. */
    public String text(Comparison comparison, Verbosity verbosity) {
        return switch (verbosity) {
            case QUIET -> comparison.recommendation() + "\n";
            case ANSWER -> answer(comparison);
            case ALL -> answer(comparison) + "\n" + everything(comparison);
        };
    }

    private String answer(Comparison comparison) {
        return Paragraph.of(Printable.of(comparison.recommendation() + others(comparison)), "", "") + "\n"
                + sideBySide(comparison) + "\n"
                + section("why they differ", differences(comparison, MOST_REASONS))
                        .stripTrailing() + "\n";
    }

    /** Under how many other weights the same converter wins. */
    private static String others(Comparison comparison) {
        List<WeightVariation> all = WeightVariation.of(comparison);
        List<String> against = all.stream()
                .filter(one -> topology(one.comparison().winner()) != topology(comparison.winner()))
                .map(WeightVariation::weighing)
                .toList();
        String same = " The " + topology(comparison.winner()).word() + " also wins under "
                + (all.size() - against.size()) + " of " + all.size() + " other sets of weights";
        return against.isEmpty() ? same + "." : same + ", but not under: " + String.join(", ", against) + ".";
    }

    private static Topology topology(Candidate candidate) {
        return candidate.arrangement().topology();
    }

    private String sideBySide(Comparison comparison) {
        List<Candidate> finalists = comparison.finalists();
        return new HeadlineText(style)
                .sideBySide(
                        finalists.stream()
                                .map(candidate -> topology(candidate).word())
                                .toList(),
                        finalists.stream()
                                .map(candidate ->
                                        Headline.of(LineCorners.only(candidate.solution()), SimulatedFigures.NONE))
                                .toList(),
                        List.of(
                                row(
                                        "law",
                                        finalists,
                                        candidate ->
                                                candidate.arrangement().law().word()),
                                row("string", finalists, ComparisonText::string),
                                row("parts", finalists, Characteristic.named("parts")::text),
                                row("board area", finalists, Characteristic.named("board area")::text),
                                row("cost", finalists, Characteristic.named("cost")::text)));
    }

    private static String string(Candidate candidate) {
        return FOUR_DIGITS.text(candidate.arrangement().voltage(), "V") + ", "
                + FOUR_DIGITS.text(candidate.arrangement().current(), "A");
    }

    private String everything(Comparison comparison) {
        return section("index", recommendation(comparison))
                + section("weighed otherwise", reweighed(comparison))
                + section("the finalists", finalists(comparison))
                + section("why they differ", differences(comparison, Integer.MAX_VALUE))
                + section("the best of each converter, law and smoothing", new FieldText(style).text(comparison))
                + section("what moves the first", sensitivities(comparison.winner()))
                + section("what does not work", refused(comparison));
    }

    private String section(String heading, String text) {
        return text.isEmpty() ? "" : style.heading(heading) + "\n" + text + "\n";
    }

    private static String recommendation(Comparison comparison) {
        String index =
                "The index is the product, over efficiency (by its losses), area, cost, flicker and life, of the best of"
                        + " the field over its own, each to the power of its weight ("
                        + comparison.weights().text()
                        + "); a driver whose harmonics, displacement or stability break a rule stands behind those that break none.";
        return Paragraph.of(Printable.of(index), "  ", "  ");
    }

    private String reweighed(Comparison comparison) {
        Grid grid = new Grid("lll");
        for (WeightVariation one : WeightVariation.of(comparison)) {
            String winner = one.comparison().winner().arrangement().text();
            grid.add(List.of(one.weighing(), winner, one.indices()));
        }
        return grid.text();
    }

    private String finalists(Comparison comparison) {
        List<Candidate> finalists = comparison.finalists();
        Grid grid = new Grid(finalists.size() == 2 ? "lrr" : "lr");
        grid.add(
                row(
                        "",
                        finalists,
                        candidate -> candidate.arrangement().topology().word()),
                style::heading);
        grid.add(
                row("law", finalists, candidate -> candidate.arrangement().law().word()));
        grid.add(row("string", finalists, ComparisonText::string));
        grid.add(row(
                "ripple smoothed",
                finalists,
                candidate -> candidate.arrangement().smoothing().word()));
        for (Characteristic characteristic :
                Characteristic.of(comparison.space().lamp())) {
            grid.add(row(characteristic.name(), finalists, characteristic::text));
        }
        grid.add(row("harmonic limits", finalists, candidate -> kept(candidate.harmonics())));
        grid.add(row(
                "hottest part is", finalists, candidate -> candidate.hottest().name()));
        return grid.text();
    }

    private static String kept(RuleVerdict verdict) {
        return verdict.outcome().word();
    }

    private static List<String> row(String name, List<Candidate> finalists, Function<Candidate, String> cell) {
        List<String> cells = new ArrayList<>(List.of(name));
        finalists.forEach(candidate -> cells.add(cell.apply(candidate)));
        return cells;
    }

    private static String differences(Comparison comparison, int most) {
        StringBuilder text = new StringBuilder();
        for (Difference difference :
                Differences.of(comparison).stream().limit(most).toList()) {
            text.append(Paragraph.of(Printable.of(difference.subject() + ": " + difference.text()), "  ", "    "));
        }
        return text.toString();
    }

    private static String sensitivities(Candidate candidate) {
        StringBuilder text = new StringBuilder();
        Map<Sensitivity.Target, List<Sensitivity>> all = Sensitivity.of(candidate);
        all.forEach((target, sensitivities) -> text.append(Paragraph.of(
                target.figure() + ": "
                        + String.join(
                                "; ",
                                sensitivities.stream()
                                        .limit(STRONGEST)
                                        .map(sensitivity -> sensitivity.text(target))
                                        .toList()),
                "  ",
                "    ")));
        return text.toString();
    }

    private static String refused(Comparison comparison) {
        StringBuilder text = new StringBuilder();
        comparison
                .space()
                .reasons()
                .forEach((reason, count) ->
                        text.append(Paragraph.of(Printable.of(count + " times " + reason), "  ", "    ")));
        return text.toString();
    }
}
