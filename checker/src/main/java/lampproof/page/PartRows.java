package lampproof.page;

import java.util.List;
import java.util.Map;
import lampproof.design.Design;
import lampproof.spec.Amount;
import lampproof.spec.Entry;
import lampproof.spec.Origin;
import lampproof.spec.Quantity;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.unit.QuantityWriter;

/** The values of a design as rows, each with its meaning and where it came from. */
final class PartRows {

    private PartRows() {}

    /** A row for each value but tolerances, given ones first. */
    static List<Map<String, Object>> of(Design design) {
        return design.values().rows().stream()
                .filter(row -> !row.name().startsWith("tolerance."))
                .sorted((a, b) -> a.origin().compareTo(b.origin()))
                .map(PartRows::row)
                .toList();
    }

    /** The text of a value; empty when the design does not have it. */
    static String value(Design design, String name) {
        return design.values().row(name).map(PartRows::value).orElse("");
    }

    private static Map<String, Object> row(SpecRow row) {
        return Map.of(
                "name", row.name(),
                "meaning", meaning(row),
                "value", value(row),
                "origin", row.origin() == Origin.GIVEN ? "given" : "chosen",
                "rule", row.note());
    }

    private static String meaning(SpecRow row) {
        return Vocabulary.find(row.name()).map(Entry::meaning).orElseThrow();
    }

    private static String value(SpecRow row) {
        return row.map(amount -> text(Vocabulary.quantity(row.name()), amount), word -> word);
    }

    private static String text(Quantity quantity, Amount amount) {
        String typical = written(quantity, amount.typical());
        return amount.isSingle()
                ? typical
                : typical + " (" + written(quantity, amount.least()) + " to " + written(quantity, amount.most()) + ")";
    }

    /** As readers write it: micro and ohm by their signs. */
    private static String written(Quantity quantity, double value) {
        return QuantityWriter.text(quantity.dimension(), value)
                .replace("Ohm", "\u03a9")
                .replace("degC", "\u00b0C")
                .replaceAll(" u(?=\\p{L})", " \u00b5")
                .replace(' ', '\u00a0');
    }
}
