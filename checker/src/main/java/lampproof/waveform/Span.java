package lampproof.waveform;

/**
 * The stretch of time that a record covers.
 *
 * @param start first time [s]
 * @param end last time [s]
 */
public record Span(double start, double end) {

    /** Length [s]. */
    public double length() {
        return end - start;
    }
}
