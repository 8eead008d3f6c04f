package lampproof.measure;

/**
 * The largest and the smallest value of a channel, and how often each is met; its result is the larger magnitude of the
 * two [unit of the channel].
 *
 * <p>A sine of amplitude {@code A} in levels {@code q} apart is at its highest level for {@code arccos(1 - q/A)/pi} of
 * its period. A channel that is there far longer was clipped by the instrument, unless it has only two levels.
 */
public final class Extremes extends Measurement {

    /**
     * Flat crests of a real line last up to about twice as long as those of a sine; a choice of ours, no source [-].
     */
    private static final double FAR_LONGER = 2.5;

    /** A rectangle is always at an extreme [-]. */
    private static final double RECTANGLE = 0.9;

    private static final double LEAST_SHARE = 0.02;

    /** The greatest of values or of their negatives, how often it was met, and the next below it. */
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
    private final Extreme high = new Extreme(1);
    private final Extreme low = new Extreme(-1);
    private long points;

    /** Measures the extremes of a channel. */
    public Extremes(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    /** How far apart the two are [unit of the channel]. */
    public double swing() {
        return high.most + low.most;
    }

    /** The share of the points at an extreme if the channel appears clipped [-]; zero otherwise. */
    public double clipped() {
        return clipped(cut(high) || cut(low), high.count + low.count);
    }

    /** The same share [-] of a channel that is never cut off below, such as light. */
    public double clippedAbove() {
        return clipped(cut(high), high.count);
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
        return Measured.of(Math.max(high.most, low.most));
    }

    private double clipped(boolean cut, long count) {
        boolean rectangle = high.count + low.count > RECTANGLE * points;
        return cut && !rectangle ? (double) count / points : 0;
    }

    /** Zero is where a current rests, not where it is cut off. */
    private boolean cut(Extreme extreme) {
        if (extreme.most == 0) {
            return false;
        }
        double amplitude = swing() / 2;
        double share = (double) extreme.count / points;
        double ofSine = Math.acos(Math.max(-1, 1 - (extreme.most - extreme.next) / amplitude)) / Math.PI;
        return share > Math.max(LEAST_SHARE, FAR_LONGER * ofSine);
    }
}
