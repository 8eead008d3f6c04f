package lampproof.page;

import java.util.Arrays;

/**
 * A curve thinned to pixel columns: its least and greatest value within each.
 *
 * @param start time at the left edge [s]
 * @param end time at the right edge [s]
 * @param low least value in each column; not a number where the record has none
 * @param high greatest value in each column; not a number where the record has none
 */
record Trace(double start, double end, double[] low, double[] high) {

    int columns() {
        return low.length;
    }

    boolean holds(int column) {
        return low[column] <= high[column];
    }

    /** Time in the middle of a column [s]. */
    double time(int column) {
        return start + (end - start) * (column + 0.5) / columns();
    }

    /** Middle between least and greatest value in a column. */
    double middle(int column) {
        return 0.5 * (low[column] + high[column]);
    }

    double least() {
        return Arrays.stream(low).filter(Double::isFinite).min().orElse(0);
    }

    double greatest() {
        return Arrays.stream(high).filter(Double::isFinite).max().orElse(0);
    }

    /**
     * Phase at the left edge of the fundamental of a curve [rad].
     *
     * @param turn what of the fundamental's period the curve shows [rad]: whole turns, or halves of a curve that alternates
     */
    double phase(double turn) {
        double sine = 0;
        double cosine = 0;
        for (int column = 0; column < columns(); column++) {
            if (holds(column)) {
                double angle = turn * (column + 0.5) / columns();
                sine += middle(column) * Math.sin(angle);
                cosine += middle(column) * Math.cos(angle);
            }
        }
        return Math.atan2(cosine, sine);
    }
}
