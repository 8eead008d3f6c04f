package lampproof.measure;

import lampproof.unit.Engineering;

/**
 * One figure measured over one window.
 *
 * <p>Its result is absent when the record does not cover the window: a window is never shortened silently.
 */
public abstract class Measurement {

    private static final double SLACK = 1e-9;

    private final Window window;
    private double from = Double.NaN;
    private double to = Double.NaN;
    private Runnable pending = () -> {};

    /** Starts a measurement. */
    protected Measurement(Window window) {
        this.window = window;
    }

    /** The window of the measurement. */
    public final Window window() {
        return window;
    }

    /** The figure, or why there is none. */
    public final Measured result() {
        pending.run();
        if (Double.isNaN(from)) {
            return Measured.absent("window " + window.text() + ": no data in it");
        }
        double slack = SLACK * window.length();
        if (from > window.start() + slack || to < window.end() - slack) {
            return Measured.absent("asked " + range(window.start(), window.end()) + ", got " + range(from, to));
        }
        return measured();
    }

    /** Adds the next pieces within the window, in the order of time. */
    protected abstract void add(Pieces pieces);

    /** The figure, once every piece of a covered window has been added. */
    protected abstract Measured measured();

    /** Adds the part of the pieces between points that lies in the window. */
    final void take(Points points) {
        double[] times = points.times();
        int first = 0;
        int last = points.count() - 1;
        if (last < 1 || times[last] < window.start() || times[0] > window.end()) {
            return;
        }
        while (first < last && times[first + 1] <= window.start() && times[first] < window.start()) {
            first++;
        }
        while (last > first && times[last - 1] >= window.end() && times[last] > window.end()) {
            last--;
        }
        if (first < last && times[first] < window.start()) {
            take(Pieces.cut(points, first++, window.start(), window.end()));
        }
        boolean longer = first < last && times[last] > window.end();
        if (first < last - (longer ? 1 : 0)) {
            take(new Pieces(points, first, longer ? last - 1 : last));
        }
        if (longer) {
            take(Pieces.cut(points, last - 1, window.start(), window.end()));
        }
    }

    private void take(Pieces pieces) {
        from = Double.isNaN(from) ? pieces.start() : from;
        to = pieces.end();
        add(pieces);
    }

    /** Sets the action that completes pending work before {@link #result} returns. */
    final void completeBy(Runnable pendingWork) {
        pending = pendingWork;
    }

    private static String range(double start, double end) {
        return Engineering.precise(start, "s") + " to " + Engineering.precise(end, "s");
    }
}
