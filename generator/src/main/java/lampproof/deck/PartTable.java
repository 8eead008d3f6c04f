package lampproof.deck;

import java.util.List;
import java.util.Set;
import lampproof.design.Design;
import lampproof.file.SheetText;
import lampproof.spec.Amount;
import lampproof.spec.Dimension;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;
import lampproof.spec.UnitWriter;
import lampproof.spec.Vocabulary;
import lampproof.spec.Word;

/** The value of each part of the lamp, given or chosen, with the rule that chose it. */
final class PartTable {

    private static final List<String> HEADER = List.of("part", "value", "unit", "origin", "rule");
    private static final Set<String> GROUPS = Set.of(
            "filter",
            "bridge",
            "bus",
            "switching",
            "inductor",
            "switch",
            "diode",
            "sense",
            "output",
            "bleeder",
            "bias",
            "string",
            "thermal",
            "life");

    private PartTable() {}

    static String text(Design design) {
        return SheetText.of(
                HEADER,
                design.rows().stream()
                        .filter(PartTable::isPart)
                        .map(PartTable::cells)
                        .toList());
    }

    private static boolean isPart(SpecRow row) {
        return GROUPS.contains(row.name().substring(0, row.name().indexOf('.')));
    }

    private static List<String> cells(SpecRow row) {
        List<String> value = row.setting() instanceof Word word ? List.of(word.text(), "") : value(row);
        String origin = row.origin() == Origin.GIVEN ? "given" : "chosen";
        return List.of(row.name(), value.get(0), value.get(1), origin, row.note());
    }

    private static List<String> value(SpecRow row) {
        Dimension dimension = Vocabulary.quantity(row.name()).dimension();
        double value = ((Amount) row.setting()).typical();
        String unit = UnitWriter.unit(dimension, value);
        return List.of(UnitWriter.number(dimension, value, unit), unit);
    }
}
