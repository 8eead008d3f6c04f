package lampproof.waveform;

/** Checks that the numbers of rows increase in equal steps; after a larger step rows are missing. */
final class RowNumberCheck {

    private double first = Double.NaN;
    private double before = Double.NaN;
    private double step = Double.NaN;

    /** The number of the row before. */
    double before() {
        return before;
    }

    /** Whether a number follows the one before, or starts again at the first. */
    boolean follows(double number) {
        boolean fits = Double.isNaN(before)
                || number == first
                || (Double.isNaN(step) ? number > before : number - before == step);
        if (Double.isNaN(before)) {
            first = number;
        } else if (Double.isNaN(step)) {
            step = number - before;
        }
        before = number;
        return fits;
    }
}
