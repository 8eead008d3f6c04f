package lampproof.prediction;

/**
 * How far a simulated value may lie from the predicted one: {@code |difference| <= relative |predicted| + absolute}.
 *
 * @param relative share of the predicted value [-]
 * @param absolute fixed width [unit of the figure]
 */
public record Tolerance(double relative, double absolute) {

    /** That of a figure which no deck shows: it is never compared. */
    public static final Tolerance NONE = new Tolerance(0, 0);

    /** A share of the predicted value [-]. */
    public static Tolerance share(double relative) {
        return new Tolerance(relative, 0);
    }

    /** A fixed width [unit of the figure]. */
    public static Tolerance width(double absolute) {
        return new Tolerance(0, absolute);
    }

    /** The same and a width beside it [unit of the figure]. */
    Tolerance widenedBy(double width) {
        return new Tolerance(relative, absolute + width);
    }

    /** The greatest difference that agrees [unit of the figure]. */
    public double around(double predicted) {
        return relative * Math.abs(predicted) + absolute;
    }

    /** Whether a value agrees with the predicted one [unit of the figure]; a value that is not a number never does. */
    public boolean agrees(double predicted, double simulated) {
        return Math.abs(simulated - predicted) <= around(predicted);
    }
}
