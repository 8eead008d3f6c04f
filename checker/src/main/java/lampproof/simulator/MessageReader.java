package lampproof.simulator;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the error stream of a running simulator: progress to a value, all else to a file. */
final class MessageReader {

    private final Lines lines;
    private final Path file;
    private final Thread thread = new Thread(this::read, "simulator messages");
    private volatile OptionalDouble reached = OptionalDouble.empty();

    private MessageReader(Lines lines, Path file) {
        this.lines = lines;
        this.file = file;
    }

    static MessageReader start(InputStream stream, Path file) {
        MessageReader reader = new MessageReader(Lines.of(stream), file);
        reader.thread.setDaemon(true);
        reader.thread.start();
        return reader;
    }

    /** The last reported simulated time [s]; empty before the first report. */
    OptionalDouble reached() {
        return reached;
    }

    /** Waits for the end of the stream for a limited time: a remaining process may keep it open. */
    void await(double seconds) {
        try {
            thread.join((long) (seconds * 1000));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void read() {
        try (lines;
                BufferedWriter log = Files.newBufferedWriter(file)) {
            for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                note(line.get(), log);
            }
        } catch (IOException e) {
            giveUp();
        }
    }

    private void note(String line, BufferedWriter log) throws IOException {
        OptionalDouble progress = Lines.reached(line);
        if (progress.isPresent()) {
            reached = progress;
        } else {
            log.append(line).append('\n');
            log.flush();
        }
    }

    /** Fails the run: without its messages it cannot be judged, and a run without messages would count as good. */
    private void giveUp() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
