package lampproof.fault;

import static java.util.Comparator.comparingInt;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the known word that a misspelt one most likely means.
 *
 * <p>Counts the letters to insert, delete or replace (V. I. Levenshtein, Binary codes capable of correcting deletions,
 * insertions and reversals, Soviet Physics Doklady 10, 1966), the letter case last.
 */
public final class NearestName {

    private static final int LONGEST = 60;

    private NearestName() {}

    /** The nearest of the known words, if at most a third of the letters differ, or one of a short word. */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        int limit = Math.max(1, word.length() / 3);
        return known.stream()
                .filter(other -> other.length() > 1 || word.length() > 1)
                .filter(other -> distance(lower(word), lower(other)) <= limit)
                .min(comparingInt((String other) -> distance(lower(word), lower(other)))
                        .thenComparingInt(other -> distance(word, other)));
    }

    /** The question whether the nearest of the known words is meant; empty when none is near. */
    public static String question(String word, Collection<String> known) {
        return question(word, known, "");
    }

    /** The question whether the nearest of the known words is meant, or another advice when none is near. */
    public static String question(String word, Collection<String> known, String otherwise) {
        return to(word, known).map(near -> "did you mean " + near + "?").orElse(otherwise);
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int column = 0; column <= to.length(); column++) {
            row[column] = column;
        }
        for (int letter = 1; letter <= from.length(); letter++) {
            advance(row, from.charAt(letter - 1), to);
        }
        return row[to.length()];
    }

    /** Turns the row of distances from the letters so far into the row with one letter more. */
    private static void advance(int[] row, char letter, String to) {
        int diagonal = row[0];
        row[0]++;
        for (int column = 1; column < row.length; column++) {
            int replaced = diagonal + (to.charAt(column - 1) == letter ? 0 : 1);
            diagonal = row[column];
            row[column] = Math.min(replaced, 1 + Math.min(row[column], row[column - 1]));
        }
    }
}
