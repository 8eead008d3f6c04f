package lampproof.physics;

/** Checks of arguments against the range of a formula; every message holds the quantity, its range and the value. */
final class Require {

    private Require() {}

    /** The value must be finite and above zero. */
    static void positive(String quantity, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(quantity + " must be above 0 and finite, found " + value);
        }
    }

    /** The value must be finite and not below zero. */
    static void notNegative(String quantity, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(quantity + " must be 0 or more and finite, found " + value);
        }
    }

    /** The value must lie between the limits, both allowed. */
    static void within(String quantity, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(quantity + " must be " + low + " to " + high + ", found " + value);
        }
    }

    /** The value must lie between the limits, neither allowed. */
    static void between(String quantity, double value, double low, double high) {
        if (!(value > low && value < high)) {
            throw new IllegalArgumentException(
                    quantity + " must be above " + low + " and below " + high + ", found " + value);
        }
    }

    /** The first value must be below the second. */
    static void below(String quantity, double value, String bound, double limit) {
        if (!(value < limit)) {
            throw new IllegalArgumentException(
                    quantity + " must be below " + bound + ", found " + value + " against " + limit);
        }
    }
}
