package lampproof.measure;

import lampproof.unit.Engineering;
import lampproof.waveform.Span;

/**
 * The interval of time over which a figure is measured.
 *
 * @param start start [s]
 * @param end end [s]
 * @param periods number of whole periods in it; 0 when it is not made of periods
 * @param what name of the period, such as {@code line period}; empty when it is not made of periods
 */
public record Window(double start, double end, int periods, String what) {

    /** A window that is not made of periods. */
    public static Window of(double start, double end) {
        return new Window(start, end, 0, "");
    }

    /** All of a record. */
    public static Window of(Span span) {
        return of(span.start(), span.end());
    }

    /** Length [s]. */
    public double length() {
        return end - start;
    }

    /** Length of one period [s]; of the whole window when it is not made of periods. */
    public double period() {
        return length() / Math.max(1, periods);
    }

    /** The last period alone. */
    public Window lastPeriod() {
        return new Window(end - period(), end, Math.min(1, periods), what);
    }

    /** The window in words, as in {@code 20 ms to 40 ms, 1 line period}. */
    public String text() {
        String span = Engineering.precise(start, "s") + " to " + Engineering.precise(end, "s");
        return periods == 0 ? span : span + ", " + periods + " " + what + (periods == 1 ? "" : "s");
    }
}
