package lampproof.measure;

/**
 * The greatest magnitude of a channel [unit of the channel], with the points beside it: a peak of a single point is not
 * resolved.
 */
public final class PeakPoint extends Measurement {

    private final Channel channel;
    private double most = -1;
    private double time;
    private double before;
    private double timeBefore;
    private double after;
    private double timeAfter;
    private boolean open;

    /** Searches for the greatest magnitude of a channel. */
    public PeakPoint(Window window, Channel channel) {
        super(window);
        this.channel = channel;
    }

    /** When it was [s]. */
    public double time() {
        return time;
    }

    /** Whether the points on both sides of it stay below half of it. */
    public boolean alone() {
        return before < most / 2 && after < most / 2;
    }

    /** How long straight lines to the neighbouring points stay above half of it [s], if it is a single point. */
    public double width() {
        return most / 2 * ((time - timeBefore) / (most - before) + (timeAfter - time) / (most - after));
    }

    @Override
    protected void add(Pieces pieces) {
        double[] level = pieces.levels(channel);
        if (open) {
            follow(pieces, pieces.first());
        }
        int peak = -1;
        for (int i = pieces.first(); i <= pieces.last(); i++) {
            double size = Math.abs(level[i]);
            if (size > most) {
                most = size;
                peak = i;
            }
        }
        if (peak >= 0) {
            begin(pieces, peak);
        }
    }

    private void begin(Pieces pieces, int peak) {
        time = pieces.times()[peak];
        boolean inner = peak > pieces.first();
        before = inner ? Math.abs(pieces.levels(channel)[peak - 1]) : Double.NaN;
        timeBefore = inner ? pieces.times()[peak - 1] : Double.NaN;
        open = peak == pieces.last();
        after = Double.NaN;
        if (!open) {
            follow(pieces, peak);
        }
    }

    /** Adds the point after the peak. */
    private void follow(Pieces pieces, int peak) {
        after = Math.abs(pieces.levels(channel)[peak + 1]);
        timeAfter = pieces.times()[peak + 1];
        open = false;
    }

    @Override
    protected Measured measured() {
        return Measured.of(most);
    }
}
