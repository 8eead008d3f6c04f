package lampproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** The best string of each converter, law and kind of smoothing, in the order of the ranking. */
final class FieldText {

    private final Style style;

    FieldText(Style style) {
        this.style = style;
    }

    String text(Comparison comparison) {
        Set<Candidate> pareto = Set.copyOf(comparison.space().pareto());
        Grid grid = new Grid("rlllrrrrrrrl");
        List<String> head = new ArrayList<>(List.of("index", "converter", "law", "smooths", "string"));
        head.addAll(List.of("efficiency", "area", "cost", "flicker", "life", "power factor", ""));
        grid.add(head, style::heading);
        for (Candidate candidate : comparison.bestOfEach()) {
            UnaryOperator<String> paint =
                    comparison.finalists().contains(candidate) ? style::good : UnaryOperator.identity();
            grid.add(cells(comparison, candidate, pareto.contains(candidate)), paint);
        }
        return grid.text() + Paragraph.of(comparison.space().counts(), "  ", "  ");
    }

    private static List<String> cells(Comparison comparison, Candidate candidate, boolean pareto) {
        return List.of(
                PlainNumber.fixed(comparison.ranking().index(candidate), 3),
                candidate.arrangement().topology().word(),
                candidate.arrangement().law().word(),
                candidate.arrangement().smoothing().word(),
                Engineering.digits(4).text(candidate.arrangement().voltage(), "V"),
                characteristic("efficiency", candidate),
                characteristic("board area", candidate),
                characteristic("cost", candidate),
                characteristic("percent flicker", candidate),
                characteristic("life of what goes first", candidate),
                characteristic("power factor", candidate),
                marks(comparison, candidate, pareto));
    }

    private static String marks(Comparison comparison, Candidate candidate, boolean pareto) {
        List<String> marks = new ArrayList<>();
        if (comparison.finalists().contains(candidate)) {
            marks.add("finalist");
        }
        if (pareto) {
            marks.add("pareto");
        }
        if (!candidate.keepsRules()) {
            marks.add("BREAKS A RULE");
        }
        return String.join(", ", marks);
    }

    private static String characteristic(String name, Candidate candidate) {
        return Characteristic.named(name).text(candidate);
    }
}
