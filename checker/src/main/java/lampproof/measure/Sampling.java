package lampproof.measure;

import java.util.Arrays;
import java.util.List;
import lampproof.waveform.Block;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;

/**
 * How a record was sampled.
 *
 * @param span stretch of time covered
 * @param times number of points that do not share their time with the one before
 * @param even whether most steps are alike, as an instrument makes them
 * @param longest the longest stretch without a sample that is longer than usual [s]; 0 when there is none
 * @param gaps what an even record lacks
 */
public record Sampling(Span span, long times, boolean even, double longest, Gaps gaps) {

    /** Times with few digits make even steps look a little uneven [-]. */
    private static final double ALIKE = 1.5;

    /** Lost and doubled rows make a few steps of an even record odd; those of a simulator are odd by nature [-]. */
    private static final double MOST_ODD = 0.05;

    /** Enough for a third harmonic with three points in its period, a choice of ours, no source [-]. */
    private static final double LEAST_PER_PERIOD = 9.5;

    /** Bursts of samples leave more steps odd, all of them too long [-]. */
    private static final double MOST_LATE = 0.1;

    /** A straight line over more of a period is nothing that was measured, a choice of ours, no source [-]. */
    private static final double LONGEST_OF_PERIOD = 0.125;

    /** Finds how waveforms were sampled, by a pass over their times. */
    public static Sampling of(Waveforms waveforms) {
        Steps steps = new Steps(new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        return steps.over(waveforms.rows(List.of(), steps::add).span());
    }

    /** What the waveforms do between their points. */
    public Interpolation interpolation() {
        return even ? Interpolation.SAMPLED : Interpolation.LINEAR;
    }

    /** Mean number of points in a second; those that share a time count once [Hz]. */
    public double rate() {
        return (times - 1) / span.length();
    }

    /** Whether the points follow a waveform of a frequency [Hz] closely enough for means over its periods. */
    public boolean follows(double frequency) {
        return rate() >= LEAST_PER_PERIOD * frequency && longest * frequency <= LONGEST_OF_PERIOD;
    }

    /** Counts the steps of a pass that also serves another purpose; the first of them give the usual step. */
    public static final class Steps {

        private final Span within;
        private long rows;
        private double last = Double.NaN;
        private double usual = Double.NaN;
        private long shared;
        private long early;
        private long late;
        private long missed;
        private double lost;
        private Span widest = new Span(0, 0);

        /**
         * Counts the steps of a record.
         *
         * @param within where a step that is too long makes a gap
         */
        public Steps(Span within) {
            this.within = within;
        }

        /** Adds the times of the next points. */
        public void add(Block block) {
            double[] times = block.times();
            if (Double.isNaN(usual)) {
                usual = median(times, block.count());
            }
            double longest = ALIKE * usual;
            double shortest = usual / ALIKE;
            for (int i = 0; i < block.count(); i++) {
                double step = times[i] - last;
                if (step > longest) {
                    late(times[i]);
                } else if (step < shortest) {
                    early(step);
                }
                last = times[i];
            }
            rows += block.count();
        }

        /** How the points lie in the stretch of time that they cover. */
        public Sampling over(Span span) {
            boolean even = usual > 0 && early + late <= MOST_ODD * rows;
            boolean bursts = usual > 0 && early <= MOST_ODD * rows && late <= MOST_LATE * rows;
            long times = usual > 0 ? rows - shared : late + 1;
            return new Sampling(span, times, even, widest.length(), even || bursts ? gaps(span) : Gaps.NONE);
        }

        private Gaps gaps(Span span) {
            double length = Math.min(span.end(), within.end()) - Math.max(span.start(), within.start());
            return new Gaps(usual, widest, lost, missed, early, length);
        }

        private void late(double time) {
            late++;
            if (time > within.start() && last < within.end()) {
                missed++;
                lost += time - last - usual;
                widest = time - last > widest.length() ? new Span(last, time) : widest;
            }
        }

        private void early(double step) {
            early++;
            shared += step == 0 ? 1 : 0;
        }

        /** The median of the steps between successive times [s]. */
        private static double median(double[] times, int count) {
            double[] steps = new double[Math.max(0, count - 1)];
            Arrays.setAll(steps, i -> times[i + 1] - times[i]);
            Arrays.sort(steps);
            return steps.length == 0 ? Double.NaN : steps[steps.length / 2];
        }
    }
}
