package lampproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class BuildVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {text()};
    }

    /** Name and version, such as {@code lampproof 0.1.0}. */
    static String text() {
        try (InputStream text = Objects.requireNonNull(BuildVersion.class.getResourceAsStream("version.txt"))) {
            return "lampproof " + new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
