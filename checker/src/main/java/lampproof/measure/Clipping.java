package lampproof.measure;

import java.util.Optional;
import lampproof.waveform.Engineering;

/**
 * The share of the points that stand at exactly an extreme of a channel [-], where an instrument seems to have cut it off;
 * zero otherwise.
 *
 * <p>A sine of amplitude {@code A} in levels {@code q} apart stands in its highest level for {@code arccos(1 - q/A)/pi} of
 * its period. What stands there far longer is cut off, unless it has but two levels.
 */
public final class Clipping extends Measurement {

    /** Flat crests of a real line stand up to about twice as long as a sine; a choice of ours, no source [-]. */
    private static final double FAR_LONGER = 2.5;

    /** A rectangle stands nowhere else [-]. */
    private static final double RECTANGLE = 0.9;

    private static final double LEAST_SHARE = 0.02;

    /** The greatest of values, how often it was met, and the next below it. */
    private static final class Extreme {
        private final double sign;
        private double most = Double.NEGATIVE_INFINITY;
        private double next = Double.NEGATIVE_INFINITY;
        private long count;

        Extreme(double sign) {
            this.sign = sign;
        }

        void add(double[] levels, int first, int last) {
            for (int i = first; i <= last; i++) {
                double level = sign * levels[i];
                if (level >= next) {
                    take(level);
                }
            }
        }

        private void take(double level) {
            if (level > most) {
                next = most;
                most = level;
                count = 1;
            } else if (level == most) {
                count++;
            } else {
                next = level;
            }
        }
    }

    private final Channel channel;
    private final boolean bothEnds;
    private final Extreme high = new Extreme(1);
    private final Extreme low = new Extreme(-1);
    private long points;

    /**
     * Looks for what is cut off.
     *
     * @param bothEnds whether the channel also swings below zero, where it may be cut off as well
     */
    public Clipping(Window window, Channel channel, boolean bothEnds) {
        super(window);
        this.channel = channel;
        this.bothEnds = bothEnds;
    }

    /** What should be known of a quantity of a name; empty when nothing seems to be cut off. */
    public Optional<String> remark(String name) {
        Measured share = result();
        return share.present() && share.value() > 0
                ? Optional.of(name + " stands at exactly the same extreme in "
                        + Engineering.fixed(100 * share.value(), 0) + " % of the points: clipped by the instrument?")
                : Optional.empty();
    }

    @Override
    protected void add(Pieces pieces) {
        int first = points == 0 ? pieces.first() : pieces.first() + 1;
        high.add(pieces.levels(channel), first, pieces.last());
        low.add(pieces.levels(channel), first, pieces.last());
        points += pieces.last() - first + 1;
    }

    @Override
    protected Measured measured() {
        boolean rectangle = high.count + low.count > RECTANGLE * points;
        boolean cut = !rectangle && (cut(high) || (bothEnds && cut(low)));
        return Measured.of(cut ? (double) (bothEnds ? high.count + low.count : high.count) / points : 0);
    }

    private boolean cut(Extreme extreme) {
        double amplitude = (high.most + low.most) / 2;
        double share = (double) extreme.count / points;
        double ofSine = Math.acos(Math.max(-1, 1 - (extreme.most - extreme.next) / amplitude)) / Math.PI;
        return share > Math.max(LEAST_SHARE, FAR_LONGER * ofSine);
    }
}
