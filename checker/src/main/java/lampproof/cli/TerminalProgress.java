package lampproof.cli;

import java.io.PrintStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lampproof.simulator.ProgressListener;
import lampproof.simulator.SimulationJob;
import lampproof.simulator.SimulationOutcome;

/** One progress bar for all running simulations, drawn only on a terminal and erased at the end. */
public final class TerminalProgress implements ProgressListener, AutoCloseable {

    private static final int STEPS_PER_RUN = 1000;

    private final Optional<TerminalBar> bar;
    private final Map<SimulationJob, Double> done = new HashMap<>();

    private TerminalProgress(Optional<TerminalBar> bar) {
        this.bar = bar;
    }

    /**
     * A bar for a number of runs.
     *
     * @param stream the stream to draw on
     * @param isTerminal whether that is a terminal; otherwise nothing is drawn
     * @param runs how many simulations there are to be
     */
    public static TerminalProgress on(PrintStream stream, boolean isTerminal, int runs) {
        long steps = (long) runs * STEPS_PER_RUN;
        return new TerminalProgress(
                isTerminal
                        ? Optional.of(new TerminalBar(stream, "simulating", "runs", STEPS_PER_RUN, steps))
                        : Optional.empty());
    }

    @Override
    public void progress(SimulationJob job, double reached, double stop) {
        advance(job, Math.min(reached / stop, 1.0));
    }

    @Override
    public void finished(SimulationOutcome outcome) {
        advance(outcome.job(), 1.0);
    }

    /** Erases the bar. */
    @Override
    public synchronized void close() {
        bar.ifPresent(TerminalBar::close);
    }

    private synchronized void advance(SimulationJob job, double share) {
        done.merge(job, share, Math::max);
        double runs = done.values().stream().mapToDouble(Double::doubleValue).sum();
        bar.ifPresent(drawn -> drawn.to(Math.round(runs * STEPS_PER_RUN), job.name()));
    }
}
