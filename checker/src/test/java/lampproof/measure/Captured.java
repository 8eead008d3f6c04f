package lampproof.measure;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Measured captures made by others, which lie outside this project.
 *
 * <p>They are looked for in the folder that the system property {@code lampproof.captures} names, else in {@code
 * ../shared/data} beside the checkout; tests that need them are skipped, with the reason, where they are absent.
 */
public final class Captured {

    private static final String PROPERTY = "lampproof.captures";
    private static final String BESIDE_THE_CHECKOUT = "../shared/data";

    private Captured() {}

    /** A capture; without the folder the test is skipped with the reason. */
    public static Path file(String name) {
        Path folder = folder();
        assumeTrue(
                Files.isDirectory(folder),
                "no captures in " + folder + "; name their folder with -D" + PROPERTY + "=FOLDER");
        return folder.resolve(name);
    }

    /** The row of right values for one capture. */
    public static Map<String, String> expected(String table, String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser =
                CSVParser.builder().setPath(file(table)).setFormat(format).get()) {
            return parser.stream()
                    .filter(r -> r.get(0).equals(name))
                    .map(CSVRecord::toMap)
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        String named = System.getProperty(PROPERTY);
        return named != null
                ? Path.of(named)
                : root().resolve(BESIDE_THE_CHECKOUT).normalize();
    }

    /** The folder that holds the modules, whether tests run from it or from one of them. */
    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.isDirectory(here.resolve("checker")) ? here : here.getParent();
    }
}
