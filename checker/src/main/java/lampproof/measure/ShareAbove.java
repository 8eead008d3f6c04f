package lampproof.measure;

/**
 * The share of the window in which the mean of a channel over equal, successive parts is above a level [-].
 *
 * <p>Parts longer than a switching cycle show whether a current flows at all; point by point, its ripple would remove a
 * share of every cycle.
 */
public final class ShareAbove extends Measurement {

    private final Bins bins;
    private int above;

    /**
     * Measures how long a channel is above a level.
     *
     * @param level level [unit of the channel]
     * @param part length of the parts [s], above 0
     */
    public ShareAbove(Window window, Channel channel, double level, double part) {
        super(window);
        bins = new Bins(window, channel, part, mean -> above += mean > level ? 1 : 0);
    }

    @Override
    protected void add(Pieces pieces) {
        bins.add(pieces);
    }

    @Override
    protected Measured measured() {
        bins.end();
        return Measured.ratio(above, (double) bins.count(), "the window is shorter than one part");
    }
}
