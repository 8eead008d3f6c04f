package lampproof.cli;

import java.io.PrintStream;
import lampproof.waveform.Progress;

/** A progress bar for each pass over a long file, drawn only on a terminal and erased at the end. */
public final class ReadProgress implements Progress, AutoCloseable {

    /** Shorter files are read too quickly for a bar [bytes]. */
    static final long LONG = 100_000_000;

    private static final long MEGABYTE = 1_000_000;

    private final PrintStream terminal;
    private final boolean drawing;
    private TerminalBar bar;

    private ReadProgress(PrintStream terminal, boolean drawing) {
        this.terminal = terminal;
        this.drawing = drawing;
    }

    /**
     * A bar for files that are read.
     *
     * @param stream the stream to draw on
     * @param isTerminal whether that is a terminal; otherwise nothing is drawn
     */
    public static ReadProgress on(PrintStream stream, boolean isTerminal) {
        return new ReadProgress(stream, isTerminal);
    }

    @Override
    public void bytes(long read, long size) {
        if (!drawing || size < LONG) {
            return;
        }
        if (bar == null) {
            bar = new TerminalBar(terminal, "reading", "MB", MEGABYTE, size);
        }
        bar.to(read, "");
    }

    /** Erases the bar. */
    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
