package lampproof.spec;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.unit.QuantityReader;

/**
 * The parts of a value cell: {@code 100nF/400V} is a number, a unit and a rating.
 *
 * @param number the number; the whole text when it has no such shape
 * @param unit the unit written behind the number; often empty
 * @param rating what follows; often empty
 */
record CellParts(String number, String unit, String rating) {

    private static final String UNIT = "(?!to\\b)[^\\s\\d.,'\u2019_/\u2013\u00b1-]\\S*?";
    private static final String GAP = "(?:\\s*/\\s*(?=\\d)|\\s+)";
    private static final Pattern SHAPE = Pattern.compile("(?<number>" + QuantityReader.NUMBER + ")" //
            + "(?:\\s*(?<unit>" + UNIT + ")(?:" + GAP + "(?<rating>.+))?)?");
    private static final Pattern PREFIX_INSIDE = Pattern.compile("\\S*\\d[a-zA-Z\u00b5\u03bc]\\d+");
    private static final String ONE_RATING =
            "\\d+(?:\\.\\d+)?\\s?k?V(?:AC|DC)?|\\d+(?:\\.\\d+)?\\s?W|[A-Z]\\d[A-Z]|NP0|NPO|PP|PET|[XY][12]";
    private static final Pattern RATINGS = Pattern.compile("(?:" + ONE_RATING + ")(?:[\\s/]+(?:" + ONE_RATING + "))*");

    static CellParts of(String text) {
        Matcher shape = SHAPE.matcher(text.replace('\u2212', '-'));
        if (PREFIX_INSIDE.matcher(text).matches() || !shape.matches()) {
            return new CellParts(text, "", "");
        }
        return new CellParts(shape.group("number"), orEmpty(shape.group("unit")), orEmpty(shape.group("rating")));
    }

    /** Whether the rating is one that parts carry: voltages, powers, dielectrics, safety classes. */
    boolean hasKnownRating() {
        return RATINGS.matcher(rating).matches();
    }

    private static String orEmpty(String group) {
        return group == null ? "" : group;
    }
}
