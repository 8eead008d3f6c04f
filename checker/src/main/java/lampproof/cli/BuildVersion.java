package lampproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class BuildVersion implements IVersionProvider {

    @Override
    public String[] getVersion() throws IOException {
        try (InputStream text = Objects.requireNonNull(BuildVersion.class.getResourceAsStream("version.txt"))) {
            return new String[] {"lampproof " + new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()};
        }
    }
}
