package lampproof.measure;

/** The mean period of a channel: its means over equal parts of a period, each averaged over all periods of the window. */
public final class PhaseMeans extends Measurement {

    private final Bins bins;
    private final double[] sums;
    private int done;

    /**
     * Measures the mean period.
     *
     * @param parts number of parts of a period
     */
    public PhaseMeans(Window window, Channel channel, int parts) {
        super(window);
        sums = new double[parts];
        bins = new Bins(window, channel, window.period() / parts, mean -> sums[done++ % parts] += mean);
    }

    /**
     * The value of the mean period [unit of the channel].
     *
     * @param share share of the period that has passed since the start of the window [-]
     */
    public double at(double share) {
        double place = (share - Math.floor(share)) * sums.length - 0.5;
        int before = Math.floorMod((int) Math.floor(place), sums.length);
        double weight = place - Math.floor(place);
        double sum = sums[before] * (1 - weight) + sums[(before + 1) % sums.length] * weight;
        return sum * sums.length / done;
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    /** The number of whole periods. */
    @Override
    protected Measured measured() {
        bins.end();
        return done < sums.length
                ? Measured.absent("the window holds no whole period")
                : Measured.of(Math.floorDiv(done, sums.length));
    }
}
