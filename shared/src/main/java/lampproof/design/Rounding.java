package lampproof.design;

import java.util.Locale;

/** Values of parts that are not sold in a preferred series. */
final class Rounding {

    private Rounding() {}

    /** The value in two digits. */
    static double twoDigits(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.1e", value));
    }

    /** The least of some ratings in rising order that a stress does not pass; the greatest when it passes all. */
    static double rating(double stress, double... ratings) {
        for (double rating : ratings) {
            if (rating >= stress) {
                return rating;
            }
        }
        return ratings[ratings.length - 1];
    }
}
