package lampproof.page;

import java.util.List;
import lampproof.design.Design;
import lampproof.spec.Amount;
import lampproof.spec.Entry;
import lampproof.spec.Origin;
import lampproof.spec.Quantity;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.unit.QuantityWriter;

/**
 * The values of a design.
 *
 * @param parts a row for each value but tolerances, given ones first
 */
record PartRows(List<Row> parts) {

    /**
     * A value.
     *
     * @param name its name in the spec
     * @param meaning what it is
     * @param value its text
     * @param origin whether it was given or chosen
     * @param rule the note of who gave it, or the rule by which it was chosen
     */
    record Row(String name, String meaning, String value, String origin, String rule) {}

    static PartRows of(Design design) {
        return new PartRows(design.values().rows().stream()
                .filter(row -> !row.name().startsWith("tolerance."))
                .sorted((a, b) -> a.origin().compareTo(b.origin()))
                .map(PartRows::row)
                .toList());
    }

    /** The text of a value; empty when the design does not have it. */
    static String value(Design design, String name) {
        return design.values().row(name).map(PartRows::value).orElse("");
    }

    /** The typical value in ASCII; empty when the design does not have it. */
    static String plain(Design design, String name) {
        return design.values().row(name).map(PartRows::plain).orElse("");
    }

    private static String plain(SpecRow row) {
        return row.map(
                amount -> QuantityWriter.text(Vocabulary.quantity(row.name()).dimension(), amount.typical()),
                word -> word);
    }

    private static Row row(SpecRow row) {
        return new Row(
                row.name(), meaning(row), value(row), row.origin() == Origin.GIVEN ? "given" : "chosen", row.note());
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

    private static String written(Quantity quantity, double value) {
        return UnitSigns.signed(QuantityWriter.text(quantity.dimension(), value))
                .replace(' ', '\u00a0');
    }
}
