package lampproof.design;

import lampproof.unit.Decimal;

/** Values of parts that are not sold in a preferred series. */
final class Rounding {

    private Rounding() {}

    /** The value in two digits. */
    static double twoDigits(double value) {
        return Decimal.of(value).rounded(2).value();
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
