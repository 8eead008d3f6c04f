package lampproof.measure;

import java.util.List;
import lampproof.waveform.Block;
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
        return steps.over(waveforms.rows(List.of(), steps::add).span());
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

        /** Takes the times of the next points. */
        public void add(Block block) {
            double[] times = block.times();
            for (int i = 0; i < block.count(); i++) {
                double step = times[i] - last;
                smallest = step < smallest ? step : smallest;
                largest = step > largest ? step : largest;
                last = times[i];
            }
            rows += block.count();
        }

        /** How the points lie in the stretch of time that they cover. */
        public Sampling over(Span span) {
            return new Sampling(span, rows, largest <= ALIKE * smallest);
        }
    }
}
