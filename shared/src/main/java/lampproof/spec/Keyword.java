package lampproof.spec;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A constant of an enum with its word in tables and on the command line, such as {@code fixed-duty}. */
public interface Keyword {

    /** The name of the constant. */
    String name();

    /** Its word. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The constant of a word, if there is one. */
    static <E extends Enum<E> & Keyword> Optional<E> of(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.word().equals(word))
                .findFirst();
    }

    /** The words of all constants, in their order. */
    static <E extends Enum<E> & Keyword> List<String> words(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Keyword::word).toList();
    }
}
