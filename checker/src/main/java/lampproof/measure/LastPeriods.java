package lampproof.measure;

import java.util.ArrayDeque;
import java.util.Deque;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** The last whole switching periods of a stretch of time, where it has settled best. */
public final class LastPeriods extends Cycles {

    private final int most;
    private final Deque<Double> starts = new ArrayDeque<>();
    private double end = Double.NaN;

    /**
     * Searches for whole switching periods.
     *
     * @param most how many to keep, from the end
     */
    public LastPeriods(Window within, Gate gate, int most) {
        super(within, gate);
        this.most = most;
    }

    /**
     * The window of the last whole switching periods.
     *
     * @throws UserFault no verdict, when there are fewer than {@code least}
     */
    public Window found(int least) {
        Measured count = result();
        int held = count.present() ? starts.size() : 0;
        if (held < least) {
            String reason = count.present() || count.note().equals(TOO_FEW) ? "" : ": " + count.note();
            throw UserFault.noVerdict(Finding.of(
                    "the record holds " + held + " whole switching periods, at least " + least + " are needed" + reason,
                    "",
                    ""));
        }
        return new Window(starts.getFirst(), end, held, "switching period");
    }

    @Override
    protected void cycle(double on, double off, double nextOn) {
        starts.addLast(on);
        if (starts.size() > most) {
            starts.removeFirst();
        }
        end = nextOn;
    }

    /** The number of whole periods kept. */
    @Override
    protected Measured overCycles() {
        return Measured.of(starts.size());
    }
}
