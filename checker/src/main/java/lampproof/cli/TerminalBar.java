package lampproof.cli;

import java.io.PrintStream;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A progress bar on one line of a terminal, erased at the end. */
final class TerminalBar implements AutoCloseable {

    private static final int REDRAW_MILLIS = 200;
    private static final int WIDTH = 79;

    private final PrintStream terminal;
    private final ProgressBar bar;

    /**
     * Draws a bar.
     *
     * @param task the task
     * @param unit what is counted
     * @param steps steps to a unit
     * @param most steps at the end
     */
    TerminalBar(PrintStream terminal, String task, String unit, long steps, long most) {
        this.terminal = terminal;
        bar = new ProgressBarBuilder()
                .setTaskName(task)
                .setInitialMax(most)
                .setUnit(" " + unit, steps)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(REDRAW_MILLIS)
                .setConsumer(new DelegatingProgressBarConsumer(line -> draw(terminal, line), WIDTH))
                .build();
    }

    /** Moves to a step and names the current item. */
    void to(long step, String what) {
        bar.stepTo(step).setExtraMessage(what);
    }

    /** Erases the bar. */
    @Override
    public void close() {
        bar.close();
        draw(terminal, " ".repeat(WIDTH) + "\r");
    }

    private static void draw(PrintStream stream, String line) {
        stream.print("\r" + line);
        stream.flush();
    }
}
