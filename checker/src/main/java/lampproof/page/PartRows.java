package lampproof.page;

import java.util.List;
import java.util.Optional;
import lampproof.design.Design;
import lampproof.spec.Amount;
import lampproof.spec.Origin;
import lampproof.spec.Quantity;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.spec.Word;
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
        return new PartRows(design.rows().stream()
                .filter(row -> !row.name().startsWith("tolerance."))
                .sorted((a, b) -> a.origin().compareTo(b.origin()))
                .map(PartRows::row)
                .toList());
    }

    /** The text of a value; empty when the design does not have it. */
    static String value(Design design, String name) {
        return design.rows().stream()
                .filter(row -> row.name().equals(name))
                .map(PartRows::value)
                .findFirst()
                .orElse("");
    }

    private static Row row(SpecRow row) {
        return new Row(
                row.name(), meaning(row), value(row), row.origin() == Origin.GIVEN ? "given" : "chosen", row.note());
    }

    private static String meaning(SpecRow row) {
        return row.setting() instanceof Word
                ? Vocabulary.choice(row.name()).meaning()
                : Vocabulary.quantity(row.name()).meaning();
    }

    private static String value(SpecRow row) {
        if (row.setting() instanceof Word word) {
            return word.text();
        }
        Amount amount = (Amount) row.setting();
        Quantity quantity = Vocabulary.quantity(row.name());
        String typical = written(quantity, amount.typical());
        return Optional.of(amount)
                .filter(one -> !one.isSingle())
                .map(one ->
                        typical + " (" + written(quantity, one.least()) + " to " + written(quantity, one.most()) + ")")
                .orElse(typical);
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
