package lampproof.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import lampproof.spec.Amount;
import lampproof.spec.Keyword;
import lampproof.spec.Origin;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import lampproof.spec.Word;

/** The values of a design: each is given in the spec or filled in by a rule, and the filled-in ones are kept. */
final class DesignValues {

    private final Spec spec;
    private final Map<String, SpecRow> filled = new LinkedHashMap<>();

    DesignValues(Spec spec) {
        this.spec = spec;
    }

    /** The given value, in the unit of its dimension; it must be there. */
    double given(String name) {
        return range(name).typical();
    }

    /** The given value with its spread; it must be there. */
    Amount range(String name) {
        return spec.amount(name).orElseThrow();
    }

    /** The constant of the given word; it must be there. */
    <E extends Enum<E> & Keyword> E given(String name, Class<E> type) {
        return spec.keyword(name, type).orElseThrow();
    }

    /** The given value, or else the one that the rule yields; the rule is evaluated once. */
    double amount(String name, String rule, DoubleSupplier value) {
        if (isOpen(name) && !filled.containsKey(name)) {
            filled.put(name, SpecRow.filledIn(name, Amount.of(value.getAsDouble()), rule));
        }
        return known(name);
    }

    /** The value that was given, or filled in before. */
    double known(String name) {
        SpecRow row = filled.get(name);
        return row == null ? given(name) : row.amount().orElseThrow().typical();
    }

    /** The given word, or else the one that the rule yields. */
    String word(String name, String rule, String value) {
        return spec.word(name).orElseGet(() -> {
            filled.put(name, SpecRow.filledIn(name, new Word(value), rule));
            return value;
        });
    }

    /** The constant of the given word, or else the usual one by the rule. */
    <E extends Enum<E> & Keyword> E keyword(String name, String rule, E usual) {
        return Keyword.of(usual.getDeclaringClass(), word(name, rule, usual.word()))
                .orElseThrow();
    }

    /** Whether the spec leaves a value open. */
    boolean isOpen(String name) {
        return !spec.names().contains(name);
    }

    /** Whether the user gave a value. */
    boolean isGiven(String name) {
        return spec.row(name).filter(row -> row.origin() == Origin.GIVEN).isPresent();
    }

    /** What was given, then what was filled in. */
    Spec all() {
        List<SpecRow> all = new ArrayList<>(filled.values());
        all.addAll(spec.rows());
        return Spec.of(all);
    }
}
