package lampproof.measure;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** The whole switching periods within a stretch of time, from its first to its last rising gate edge. */
public final class SwitchingWindow extends Cycles {

    /** Searches for whole switching periods. */
    public SwitchingWindow(Window within, Gate gate) {
        super(within, gate);
    }

    /**
     * The window of whole switching periods.
     *
     * @throws UserFault no verdict, when there is not one whole period
     */
    public Window found() {
        Measured count = result();
        if (!count.present()) {
            throw UserFault.noVerdict(Finding.of("no whole switching period: " + count.note(), "", ""));
        }
        return new Window(firstRise(), firstRise() + span(), cycles(), "switching period");
    }

    @Override
    protected void cycle(double on, double off, double nextOn) {}

    /** The number of whole periods. */
    @Override
    protected Measured overCycles() {
        return Measured.of(cycles());
    }
}
