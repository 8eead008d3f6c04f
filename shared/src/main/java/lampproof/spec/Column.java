package lampproof.spec;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns of a spec table. */
enum Column {
    QUANTITY,
    MIN,
    TYP,
    MAX,
    UNIT,
    NOTE,
    ORIGIN;

    /** The columns of which every table has each; only lampproof itself writes {@link #ORIGIN}. */
    static final List<Column> NEEDED = List.of(QUANTITY, MIN, TYP, MAX, UNIT, NOTE);

    /** The columns that hold numbers. */
    static final List<Column> VALUES = List.of(MIN, TYP, MAX);

    /** The word in the header line. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Column::word).toList();
    }

    static Optional<Column> of(String word) {
        return Arrays.stream(values())
                .filter(column -> column.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
