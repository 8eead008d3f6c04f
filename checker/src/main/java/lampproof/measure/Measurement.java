package lampproof.measure;

import lampproof.waveform.Engineering;

/**
 * One figure taken over one window.
 *
 * <p>Its result is absent when the record does not cover the window: a window is never shortened in silence.
 */
public abstract class Measurement {

    private static final double SLACK = 1e-9;

    private final Window window;
    private double from = Double.NaN;
    private double to = Double.NaN;
    private Runnable rest = () -> {};

    /** Starts a measurement. */
    protected Measurement(Window window) {
        this.window = window;
    }

    /** The window it is taken over. */
    public final Window window() {
        return window;
    }

    /** The figure, or why there is none. */
    public final Measured result() {
        rest.run();
        if (Double.isNaN(from)) {
            return Measured.absent("window " + window.text() + ": no data in it");
        }
        double slack = SLACK * window.length();
        if (from > window.start() + slack || to < window.end() - slack) {
            return Measured.absent("asked " + range(window.start(), window.end()) + ", got " + range(from, to));
        }
        return measured();
    }

    /** Takes the next piece within the window, in the order of time. */
    protected abstract void add(Piece piece);

    /** The figure, once every piece of a covered window has been taken. */
    protected abstract Measured measured();

    final void take(Piece piece) {
        if (Double.isNaN(from)) {
            from = piece.start();
        }
        to = piece.end();
        add(piece);
    }

    /** Whom to ask for what still waits before there is a result. */
    final void waitFor(Runnable others) {
        rest = others;
    }

    private static String range(double start, double end) {
        return Engineering.exact(start, "s") + " to " + Engineering.exact(end, "s");
    }
}
