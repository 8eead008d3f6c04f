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
import lampproof.spec.Word;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/** The value or kind of each part and of what surrounds it, given or chosen, with its margin and the rule that chose it. */
final class PartTable {

    private static final List<String> HEADER = List.of("part", "value", "unit", "origin", "margin", "rule");
    private static final Set<String> OTHERS = Set.of("line", "driver", "decks", "tolerance");

    private PartTable() {}

    static String text(Design design, Map<String, String> margins) {
        return CsvText.of(
                HEADER,
                design.rows().stream()
                        .filter(PartTable::isPart)
                        .map(row -> cells(row, margins.getOrDefault(row.name(), "")))
                        .toList());
    }

    private static boolean isPart(SpecRow row) {
        return !OTHERS.contains(row.name().substring(0, row.name().indexOf('.')));
    }

    private static List<String> cells(SpecRow row, String margin) {
        String origin = row.origin() == Origin.GIVEN ? "given" : "chosen";
        if (!(row.setting() instanceof Amount amount)) {
            return List.of(row.name(), ((Word) row.setting()).text(), "", origin, margin, row.note());
        }
        Dimension dimension = Vocabulary.quantity(row.name()).dimension();
        String unit = QuantityWriter.unit(dimension, amount.typical());
        String number = QuantityWriter.number(dimension, amount.typical(), unit);
        return List.of(row.name(), number, unit, origin, margin, row.note());
    }
}
