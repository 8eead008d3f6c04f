package lampproof.simulator;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines that the simulator prints, separated by line feeds or carriage returns, since its progress text ends in
 * carriage returns only: {@code Reference value :  1.69253e-03}.
 *
 * <p>An overlong line is split, so that a run-away print cannot fill the memory.
 */
final class Lines implements Closeable {

    private static final int LONGEST = 4096;
    private static final Pattern PROGRESS = Pattern.compile("\\s*Reference value :\\s*(\\S+)\\s*");

    private final Reader reader;
    private boolean returned;

    private Lines(Reader reader) {
        this.reader = reader;
    }

    static Lines of(InputStream stream) {
        return new Lines(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)));
    }

    static Lines of(Path file) throws IOException {
        return of(Files.newInputStream(file));
    }

    static Lines of(String text) {
        return new Lines(new StringReader(text));
    }

    /** Copies a file line by line, without the progress. */
    static void copy(Path file, Writer target) throws IOException {
        try (Lines lines = of(file)) {
            for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                if (reached(line.get()).isEmpty()) {
                    target.append(line.get()).append('\n');
                }
            }
        }
    }

    /** The simulated time in a line of progress [s]; empty for any other line. */
    static OptionalDouble reached(String line) {
        Matcher progress = PROGRESS.matcher(line);
        try {
            return progress.matches()
                    ? OptionalDouble.of(Double.parseDouble(progress.group(1)))
                    : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** The next line, without its end; empty at the end of the text. */
    Optional<String> next() throws IOException {
        StringBuilder line = new StringBuilder();
        int character = first();
        if (character < 0) {
            return Optional.empty();
        }
        while (character >= 0 && character != '\n' && character != '\r' && line.length() < LONGEST) {
            line.append((char) character);
            character = reader.read();
        }
        returned = character == '\r';
        return Optional.of(line.toString());
    }

    /** The first character of a line; a line feed after a carriage return belongs to the line before. */
    private int first() throws IOException {
        int character = reader.read();
        return returned && character == '\n' ? reader.read() : character;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
