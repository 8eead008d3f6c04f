package lampproof.measure;

import java.util.Optional;
import lampproof.unit.Engineering;
import lampproof.waveform.Span;

/**
 * Missing rows of an evenly sampled record.
 *
 * <p>A straight line across a lost row does little harm; across a part of a period it invents numbers.
 *
 * @param step usual step [s]
 * @param widest the longest stretch without a sample, from one row to the next; of no length when there is none
 * @param lost time that lacks samples, all stretches together [s]
 * @param count number of such stretches
 * @param early number of rows that follow the one before too early, as doubled ones do
 * @param length stretch of time that was examined [s]
 */
public record Gaps(double step, Span widest, double lost, long count, long early, double length) {

    /** A record in which nothing can be missed. */
    static final Gaps NONE = new Gaps(0, new Span(0, 0), 0, 0, 0, 0);

    /** A single lost row makes two steps of one [-]. */
    private static final double ONE_ROW = 2.5;

    /** Some thirtieth of a line period, a choice of ours, no source [s]. */
    private static final double LONGEST = 0.5e-3;

    /** Common practice, no source: half of what means are compared with [-]. */
    private static final double SHARE = 0.01;

    /** Why no figure can be measured across the gaps; empty if they do little harm. */
    public Optional<String> fault() {
        boolean wide = widest.length() > ONE_ROW * step;
        return wide && (widest.length() > LONGEST || lost > SHARE * length) ? Optional.of(missing()) : Optional.empty();
    }

    /** What should be known of them; empty when there is nothing to say. */
    public Optional<String> remark() {
        if (count > 0) {
            return Optional.of(missing() + ": bridged by straight lines");
        }
        return early > 0
                ? Optional.of("rows follow each other too early in " + early + (early == 1 ? " place" : " places")
                        + ", step " + Engineering.rounded(step, "s") + " elsewhere: doubled?")
                : Optional.empty();
    }

    private String missing() {
        String first = "no sample from " + Engineering.precise(widest.start(), "s") + " to "
                + Engineering.precise(widest.end(), "s");
        return (count > 1 ? first + " and in " + (count - 1) + " more places" : first) + ", step "
                + Engineering.rounded(step, "s") + " elsewhere";
    }
}
