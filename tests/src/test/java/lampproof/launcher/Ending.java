package lampproof.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** How a program ended: its exit code and what it wrote. */
record Ending(int code, String out, String err) {

    /** Starts the program, with nothing on its standard input, and waits for its end. */
    static Ending of(ProcessBuilder program) {
        try {
            Path out = Files.createTempFile("lampproof-out", null);
            Path err = Files.createTempFile("lampproof-err", null);
            Process process = program.redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            process.getOutputStream().close();
            return new Ending(process.waitFor(), readAndDelete(out), readAndDelete(err));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String readAndDelete(Path file) throws IOException {
        String text = Files.readString(file);
        Files.delete(file);
        return text;
    }
}
