package lampproof.report;

import java.util.Comparator;
import java.util.List;
import lampproof.choice.BillOfMaterials;
import lampproof.choice.DesignPair;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.prediction.loss.LossPart;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdicts;
import lampproof.rule.SimulatedFigures;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.unit.PlainNumber;
import lampproof.unit.QuantityWriter;
import lampproof.unit.ValueStyle;

/** Two designs side by side for a reader: headline, losses, size and cost, rules, then the rows and figures that differ. */
public final class DesignPairText {

    private static final int MOST_FIGURES = 12;
    private static final double SQUARE_MILLIMETRES = 1e6;

    private final Style style;
    private final List<String> names;
    private final DesignPair pair;

    /** Two named designs in a style. */
    public DesignPairText(List<String> names, DesignPair pair, Style style) {
        this.names = names.stream().map(Printable::of).toList();
        this.pair = pair;
        this.style = style;
    }

    /** The comparison as lines. */
    public String text(Verbosity verbosity) {
        if (verbosity == Verbosity.QUIET) {
            return names.get(0) + " and " + names.get(1) + ": "
                    + count(pair.changedRows().size(), "row differs", "rows differ") + ", "
                    + count(pair.moved().size(), "figure moved", "figures moved") + "\n";
        }
        int most = verbosity == Verbosity.ALL ? Integer.MAX_VALUE : MOST_FIGURES;
        return headline() + "\n" + losses() + "\n" + rules() + "\n" + rows() + "\n" + figures(most);
    }

    private static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    private String headline() {
        return new HeadlineText(style)
                .sideBySide(
                        names,
                        List.of(
                                Headline.of(pair.first().corners(), SimulatedFigures.NONE),
                                Headline.of(pair.second().corners(), SimulatedFigures.NONE)),
                        List.of(
                                both(
                                        "parts",
                                        pair.firstBill().count() + "",
                                        pair.secondBill().count() + ""),
                                both("board area", area(pair.firstBill()), area(pair.secondBill())),
                                both("cost", cost(pair.firstBill()), cost(pair.secondBill()))));
    }

    private static List<String> both(String name, String first, String second) {
        return List.of(name, first, second);
    }

    private static String area(BillOfMaterials bill) {
        return ValueStyle.SENTENCE.text(SQUARE_MILLIMETRES * bill.area(), "mm2");
    }

    private static String cost(BillOfMaterials bill) {
        return ValueStyle.SENTENCE.text(bill.cost(), "points");
    }

    private String losses() {
        Grid grid = new Grid("lrrr").add(List.of("loss", names.get(0), names.get(1), "change"), style::heading);
        for (LossPart part : LossPart.values()) {
            double first = loss(pair.first(), part);
            double second = loss(pair.second(), part);
            if (first > 0 || second > 0) {
                grid.add(List.of(part.label(), watts(first), watts(second), change(second - first)));
            }
        }
        return grid.text();
    }

    private static double loss(PredictedDesign design, LossPart part) {
        return design.solution().losses().of(part);
    }

    private static String watts(double power) {
        return ValueStyle.HEADLINE.text(power, "W");
    }

    private static String change(double power) {
        return power == 0 ? "" : (power > 0 ? "+" : "") + watts(power);
    }

    private String rules() {
        return rules(names.get(0), pair.first()) + rules(names.get(1), pair.second());
    }

    private String rules(String name, PredictedDesign design) {
        List<RuleJudgement> judgements = RuleVerdicts.of(design.corners(), SimulatedFigures.NONE);
        return style.heading(name) + ", " + new RuleText(style).summary(judgements);
    }

    private String rows() {
        List<DesignPair.Row> rows = pair.changedRows();
        if (rows.isEmpty()) {
            return "The specs do not differ.\n";
        }
        Grid grid = new Grid("lllll").add(List.of("row", names.get(0), "", names.get(1), ""), style::heading);
        rows.forEach(row -> grid.add(List.of(
                row.name(),
                row.first().map(DesignPairText::value).orElse(""),
                row.first().map(DesignPairText::origin).orElse(""),
                row.second().map(DesignPairText::value).orElse(""),
                row.second().map(DesignPairText::origin).orElse(""))));
        return grid.text();
    }

    private static String value(SpecRow row) {
        return row.map(
                amount -> QuantityWriter.text(Vocabulary.quantity(row.name()).dimension(), amount.typical()),
                word -> word);
    }

    private static String origin(SpecRow row) {
        return row.origin() == Origin.GIVEN ? "given" : "chosen";
    }

    /** The figures that moved, the furthest first. */
    private String figures(int most) {
        List<DesignPair.Figure> moved = pair.moved().stream()
                .sorted(Comparator.comparingDouble(DesignPair.Figure::change).reversed())
                .toList();
        if (moved.isEmpty()) {
            return "No figure moved.\n";
        }
        Grid grid =
                new Grid("llrrr").add(List.of("figure", "deck", names.get(0), names.get(1), "change"), style::heading);
        moved.stream().limit(most).forEach(figure -> grid.add(cells(figure)));
        String rest = moved.size() > most ? "  " + (moved.size() - most) + " more: --all lists them\n" : "";
        return grid.text() + rest;
    }

    private static List<String> cells(DesignPair.Figure figure) {
        String unit = figure.first().figure().unit();
        double difference = figure.second().value() - figure.first().value();
        String change = unit.startsWith("dB")
                        || unit.equals("%")
                        || figure.first().value() == 0
                ? ""
                : PlainNumber.signed(100 * difference / Math.abs(figure.first().value()), 1) + " %";
        return List.of(
                figure.first().figure().name(),
                figure.first().deck().map(DeckKind::word).orElse(""),
                ValueStyle.FIGURES.text(figure.first().value(), unit),
                ValueStyle.FIGURES.text(figure.second().value(), unit),
                change);
    }
}
