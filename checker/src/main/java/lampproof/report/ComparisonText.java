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
import lampproof.rule.RuleVerdict;
import lampproof.unit.Engineering;

/** A comparison for a reader: the recommendation, the finalists side by side, why they differ, the design space, what moves them. */
public final class ComparisonText {

    private static final int STRONGEST = 4;
    private static final Engineering FOUR_DIGITS = Engineering.digits(4).inAscii();

    private final Style style;

    /** Comparisons in a style. */
    public ComparisonText(Style style) {
        this.style = style;
    }

    /** The comparison as lines. */
    public String text(Comparison comparison) {
        return section("recommendation", recommendation(comparison))
                + section("weighed otherwise", reweighed(comparison))
                + section("the finalists", finalists(comparison))
                + section("what makes them differ", differences(comparison))
                + section("the best of each converter, law and smoothing", new FieldText(style).text(comparison))
                + section("what moves the first", sensitivities(comparison.winner()))
                + section("what does not work", refused(comparison));
    }

    private String section(String heading, String text) {
        return text.isEmpty() ? "" : style.heading(heading) + "\n" + text + "\n";
    }

    private static String recommendation(Comparison comparison) {
        String index =
                " The index is the product, over efficiency (by its losses), area, cost, flicker and life, of the best of"
                        + " the field over its own, each to the power of its weight ("
                        + comparison.weights().text()
                        + "); a driver whose harmonics, displacement or stability break a rule stands behind those that break none.";
        return Paragraph.of(Printable.of(comparison.recommendation() + index), "  ", "  ");
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
        grid.add(row(
                "string",
                finalists,
                candidate -> FOUR_DIGITS.text(candidate.arrangement().voltage(), "V") + ", "
                        + FOUR_DIGITS.text(candidate.arrangement().current(), "A")));
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

    private static String differences(Comparison comparison) {
        StringBuilder text = new StringBuilder();
        for (Difference difference : Differences.of(comparison)) {
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
