package lampproof.spec;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampproof.unit.Dimension;

/** The values of a lamp: amounts in the units of their {@link Dimension}, and words. Immutable. */
public final class Spec {

    private final Map<String, SpecRow> rows;

    private Spec(Map<String, SpecRow> rows) {
        this.rows = Collections.unmodifiableMap(rows);
    }

    /**
     * The spec of these rows, kept in their order.
     *
     * @throws IllegalArgumentException when a name occurs twice
     */
    public static Spec of(List<SpecRow> rows) {
        Map<String, SpecRow> byName = new LinkedHashMap<>(2 * rows.size());
        for (SpecRow row : rows) {
            if (byName.put(row.name(), row) != null) {
                throw new IllegalArgumentException(row.name() + " is there twice");
            }
        }
        return new Spec(byName);
    }

    /**
     * The amount of a quantity, if the spec has it.
     *
     * @throws IllegalArgumentException when the vocabulary has no such quantity
     */
    public Optional<Amount> amount(String name) {
        return row(Vocabulary.quantity(name)).flatMap(SpecRow::amount);
    }

    /**
     * The word of a choice, if the spec has it.
     *
     * @throws IllegalArgumentException when the vocabulary has no such choice
     */
    public Optional<String> word(String name) {
        return row(Vocabulary.choice(name)).flatMap(SpecRow::word);
    }

    /**
     * The constant of the word of a choice, if the spec has it.
     *
     * @throws IllegalArgumentException when the vocabulary has no such choice
     */
    public <E extends Enum<E> & Keyword> Optional<E> keyword(String name, Class<E> type) {
        return word(name).flatMap(word -> Keyword.of(type, word));
    }

    /** The names that the spec has, in the order of the table. */
    public Set<String> names() {
        return rows.keySet();
    }

    /** The rows, in the order of the table. */
    public List<SpecRow> rows() {
        return List.copyOf(rows.values());
    }

    /**
     * The row of a name, with note, origin and line, if the spec has it.
     *
     * @throws IllegalArgumentException when the vocabulary has no such name
     */
    public Optional<SpecRow> row(String name) {
        return row(Vocabulary.find(name).orElseThrow(() -> Vocabulary.unknown(name)));
    }

    private Optional<SpecRow> row(Entry entry) {
        return Optional.ofNullable(rows.get(entry.name()));
    }
}
