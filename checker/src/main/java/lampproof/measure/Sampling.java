package lampproof.measure;

import java.util.List;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;

/**
 * How a record was sampled.
 *
 * @param span stretch of time covered
 * @param rows number of points
 * @param even whether all steps are alike, as an instrument makes them
 */
public record Sampling(Span span, long rows, boolean even) {

    /** Times with few digits make even steps look a little uneven [-]. */
    private static final double ALIKE = 1.5;

    /** Finds how waveforms were sampled, by a pass over their times. */
    public static Sampling of(Waveforms waveforms) {
        Steps steps = new Steps();
        Span span =
                waveforms.rows(List.of(), (time, values) -> steps.next(time)).span();
        return steps.over(span);
    }

    /** What the waveforms do between their points. */
    public Between between() {
        return even ? Between.SAMPLED : Between.STRAIGHT;
    }

    /** Mean number of points in a second [Hz]. */
    public double rate() {
        return (rows - 1) / span.length();
    }

    /** Counts the steps of a pass that also serves another purpose. */
    public static final class Steps {
        private long rows;
        private double last = Double.NaN;
        private double smallest = Double.POSITIVE_INFINITY;
        private double largest;

        /** Takes the time of the next point [s]. */
        public void next(double time) {
            if (rows++ > 0) {
                smallest = Math.min(smallest, time - last);
                largest = Math.max(largest, time - last);
            }
            last = time;
        }

        /** How the points lie in the stretch of time that they cover. */
        public Sampling over(Span span) {
            return new Sampling(span, rows, largest <= ALIKE * smallest);
        }
    }
}
