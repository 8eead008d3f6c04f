package lampproof.spec;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns of a spec table. */
enum Column implements Keyword {
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

    static Optional<Column> of(String word) {
        return Keyword.of(Column.class, word.toLowerCase(Locale.ROOT));
    }
}
