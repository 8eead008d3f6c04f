package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KilledSimulatorTest {

    private static final String KILLING = """
            #!/bin/sh
            [ "$1" != --version ] || exec 'NGSPICE' --version
            'NGSPICE' "$@" &
            sleep 0.3
            kill -9 $!
            wait $!
            """;

    @TempDir
    private Path folder;

    @Test
    void aSimulatorThatIsKilledHalfWayGivesNoVerdictOnAnyFigure() throws Exception {
        String real = Lampproof.simulatorOrSkip().toString();
        Path killing = Files.writeString(folder.resolve("ngspice.sh"), KILLING.replace("NGSPICE", real));
        Files.setPosixFilePermissions(killing, PosixFilePermissions.fromString("rwxr-xr-x"));
        try (InputStream spec =
                Objects.requireNonNull(getClass().getResourceAsStream("/lampproof/examples/stairwell-step-down.csv"))) {
            Files.copy(spec, folder.resolve("lamp.csv"));
        }
        Map<String, String> environment = Map.of("LAMPPROOF_NGSPICE", killing.toString());
        Lampproof proved = Lampproof.run(folder, environment, "prove", "lamp.csv", "-o", "run");
        assertThat(proved.exitCode()).as(proved.toString()).isEqualTo(3);
        assertThat(proved.out().replaceAll("\\s+", " ")).contains("the simulator was ended by signal 9 (kill)");
        assertThat(VerdictRows.rows(folder.resolve("run")))
                .hasSizeGreaterThan(50)
                .allSatisfy(row -> {
                    assertThat(row.get("verdict")).isIn("no verdict", "predicted only");
                    assertThat(row.get("simulated")).isEmpty();
                });
    }
}
