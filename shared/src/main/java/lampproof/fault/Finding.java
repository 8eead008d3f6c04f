package lampproof.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing that is wrong, with what the reader needs to correct it.
 *
 * @param what what is wrong, in one clause
 * @param where the place: file, line and cell, or option; empty when there is no place
 * @param found the value found; empty when nothing was found
 * @param allowed the values or range that would have been right; empty when the clause says it all
 * @param next what to do next; empty when {@code allowed} says it all
 */
public record Finding(String what, String where, String found, String allowed, String next) {

    /** A finding that is all said in one clause. */
    public static Finding of(String what, String where, String next) {
        return new Finding(what, where, "", "", next);
    }

    /** The finding on one line: {@code where: what, found 'x', allowed y; next}. */
    public String text() {
        List<String> clauses = new ArrayList<>(List.of(what));
        if (!found.isEmpty()) {
            clauses.add("found '" + found + "'");
        }
        if (!allowed.isEmpty()) {
            clauses.add("allowed: " + allowed);
        }
        String sentence = String.join(", ", clauses);
        String place = where.isEmpty() ? "" : where + ": ";
        return next.isEmpty() ? place + sentence : place + sentence + "; " + next;
    }
}
