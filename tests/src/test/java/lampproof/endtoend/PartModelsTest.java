package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lamps whose parts have more than the usual model: the real simulator runs them and every figure agrees. */
class PartModelsTest {

    private static final String MAINS = """
            quantity,min,typ,max,unit,note
            line.voltage,207,230,253,V,
            line.frequency,,50,,Hz,
            """;

    @TempDir
    private Path folder;

    private Lampproof prove(String rows, String... more) throws Exception {
        Lampproof.simulatorOrSkip();
        Files.writeString(folder.resolve("lamp.csv"), MAINS + rows + String.join("\n", more));
        Lampproof proved = Lampproof.run(folder, "prove", "lamp.csv", "-o", "run");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        return proved;
    }

    @Test
    void aStringOfThreePointsAgrees() throws Exception {
        prove("""
                driver.topology,,step-up,,,
                string.current,,16.7,,mA,
                string.voltage_low,,398,,V,
                string.current_low,,8,,mA,
                string.voltage_mid,,414,,V,
                string.current_mid,,14,,mA,
                string.voltage_high,,430,,V,
                string.current_high,,22,,mA,
                """);
        assertThat(Files.readString(folder.resolve("run/spec.csv")))
                .contains("string.voltage,", "diodes with series resistance through three points");
    }
}
