package lampproof.deck;

import java.util.List;
import java.util.Map;
import java.util.Set;
import lampproof.design.Design;
import lampproof.file.CsvText;
import lampproof.spec.Amount;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/** The value or kind of each part and of its surroundings, given or chosen, with its margin and default rule. */
final class PartTable {

    private static final List<String> HEADER = List.of("part", "value", "unit", "origin", "margin", "rule");
    private static final Set<String> OTHERS = Set.of("line", "driver", "decks", "tolerance");

    private PartTable() {}

    static String text(Design design, Map<String, String> margins) {
        return CsvText.of(
                HEADER,
                design.values().rows().stream()
                        .filter(PartTable::isPart)
                        .map(row -> cells(row, margins.getOrDefault(row.name(), "")))
                        .toList());
    }

    private static boolean isPart(SpecRow row) {
        return !OTHERS.contains(row.name().substring(0, row.name().indexOf('.')));
    }

    private static List<String> cells(SpecRow row, String margin) {
        String origin = row.origin() == Origin.GIVEN ? "given" : "chosen";
        String unit = row.amount().map(amount -> unit(row, amount)).orElse("");
        String value = row.map(amount -> number(row, amount, unit), word -> word);
        return List.of(row.name(), value, unit, origin, margin, row.note());
    }

    private static String unit(SpecRow row, Amount amount) {
        return QuantityWriter.unit(dimension(row), amount.typical());
    }

    private static String number(SpecRow row, Amount amount, String unit) {
        return QuantityWriter.number(dimension(row), amount.typical(), unit);
    }

    private static Dimension dimension(SpecRow row) {
        return Vocabulary.quantity(row.name()).dimension();
    }
}
