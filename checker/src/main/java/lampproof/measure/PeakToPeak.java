package lampproof.measure;

/** The largest minus the smallest value of a channel. */
public final class PeakToPeak extends Measurement {

    private final Peak peak;
    private final Trough trough;

    /** Measures the full swing of a channel. */
    public PeakToPeak(Window window, Channel channel) {
        super(window);
        peak = new Peak(window, channel);
        trough = new Trough(window, channel);
    }

    @Override
    protected void add(Pieces pieces) {
        peak.add(pieces);
        trough.add(pieces);
    }

    @Override
    protected Measured measured() {
        return peak.measured().with(trough.measured(), (high, low) -> high - low);
    }
}
