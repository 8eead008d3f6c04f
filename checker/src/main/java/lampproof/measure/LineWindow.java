package lampproof.measure;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.unit.Engineering;
import lampproof.waveform.Span;

/** Windows of whole line periods at the end of a record, where it has settled best. */
public final class LineWindow {

    /** What a half period of the line is called. */
    public static final String HALF_PERIOD = "line half period";

    /** A simulator writes its first point a little after time zero [periods]. */
    private static final double SLACK = 1e-5;

    private LineWindow() {}

    /**
     * As many whole line periods as fit in a record.
     *
     * @param frequency line frequency [Hz]
     * @throws UserFault no verdict, when the record holds not even one
     */
    public static Window last(Span record, double frequency) {
        return last(record, frequency, whole(record, frequency), "line period");
    }

    /** The last so many whole periods of a line frequency [Hz]. */
    public static Window last(Span record, double frequency, int periods) {
        return last(record, frequency, periods, "line period");
    }

    /** As many whole half periods of a line frequency [Hz] as a record holds, for what repeats twice a line period. */
    public static Window lastHalves(Span record, double frequency) {
        return last(record, 2 * frequency, whole(record, 2 * frequency), HALF_PERIOD);
    }

    /** The last whole period of a line frequency [Hz]; in a record that holds only half of one, the last half. */
    public static Window lastOrHalf(Span record, double frequency) {
        return whole(record, frequency) > 0 ? last(record, frequency, 1) : last(record, 2 * frequency, 1, HALF_PERIOD);
    }

    private static int whole(Span record, double frequency) {
        return (int) Math.floor(record.length() * frequency + SLACK);
    }

    private static Window last(Span record, double frequency, int periods, String what) {
        int held = whole(record, frequency);
        if (held < Math.max(1, periods)) {
            throw UserFault.noVerdict(Finding.of(
                    "the record of " + Engineering.precise(record.length(), "s") + " holds " + held + " whole " + what
                            + "s of " + Engineering.precise(1 / frequency, "s"),
                    "",
                    "record longer"));
        }
        double start = Math.max(record.start(), record.end() - periods / frequency);
        return new Window(start, record.end(), periods, what);
    }
}
