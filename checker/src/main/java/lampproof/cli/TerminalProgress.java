package lampproof.cli;

import java.io.PrintStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lampproof.simulator.ProgressListener;
import lampproof.simulator.SimulationJob;
import lampproof.simulator.SimulationOutcome;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** One bar for all simulations at work, drawn on a terminal and nowhere else, and wiped off at the end. */
public final class TerminalProgress implements ProgressListener, AutoCloseable {

    private static final int STEPS_PER_RUN = 1000;
    private static final int REDRAW_MILLIS = 200;
    private static final int WIDTH = 79;

    private final PrintStream terminal;
    private final Optional<ProgressBar> bar;
    private final Map<SimulationJob, Double> done = new HashMap<>();

    private TerminalProgress(PrintStream terminal, Optional<ProgressBar> bar) {
        this.terminal = terminal;
        this.bar = bar;
    }

    /**
     * A bar for a number of runs.
     *
     * @param stream the stream to draw on
     * @param isTerminal whether that is a terminal; otherwise nothing is ever drawn
     * @param runs how many simulations there are to be
     */
    public static TerminalProgress on(PrintStream stream, boolean isTerminal, int runs) {
        return new TerminalProgress(stream, isTerminal ? Optional.of(bar(stream, runs)) : Optional.empty());
    }

    @Override
    public void progress(SimulationJob job, double reached, double stop) {
        advance(job, Math.min(reached / stop, 1.0));
    }

    @Override
    public void finished(SimulationOutcome outcome) {
        advance(outcome.job(), 1.0);
    }

    /** Wipes the bar off. */
    @Override
    public synchronized void close() {
        bar.ifPresent(drawn -> {
            drawn.close();
            terminal.print("\r" + " ".repeat(WIDTH) + "\r");
            terminal.flush();
        });
    }

    private synchronized void advance(SimulationJob job, double share) {
        done.merge(job, share, Math::max);
        double runs = done.values().stream().mapToDouble(Double::doubleValue).sum();
        bar.ifPresent(drawn -> drawn.stepTo(Math.round(runs * STEPS_PER_RUN)).setExtraMessage(job.name()));
    }

    private static ProgressBar bar(PrintStream stream, int runs) {
        return new ProgressBarBuilder()
                .setTaskName("simulating")
                .setInitialMax((long) runs * STEPS_PER_RUN)
                .setUnit(" runs", STEPS_PER_RUN)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(REDRAW_MILLIS)
                .setConsumer(new DelegatingProgressBarConsumer(line -> draw(stream, line), WIDTH))
                .build();
    }

    private static void draw(PrintStream stream, String line) {
        stream.print("\r" + line);
        stream.flush();
    }
}
