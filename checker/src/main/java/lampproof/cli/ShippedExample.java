package lampproof.cli;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import lampproof.spec.Spec;
import lampproof.spec.SpecReader;

/**
 * A spec that ships with lampproof.
 *
 * @param name its name
 */
record ShippedExample(String name) {

    /** Every example: one lamp, two converters. */
    static final List<ShippedExample> ALL =
            List.of(new ShippedExample("stairwell-step-down"), new ShippedExample("stairwell-step-up"));

    Spec spec() {
        String file = name + ".csv";
        try (Reader table = new InputStreamReader(
                Objects.requireNonNull(ShippedExample.class.getResourceAsStream("/lampproof/examples/" + file)),
                StandardCharsets.UTF_8)) {
            return SpecReader.read(table, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
