package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A lamp for each converter and control law that the shipped examples leave out: every figure of both decks agrees, and
 * every loss within five per cent.
 *
 * <p>The step-up lamp of fixed duty is one for 120 V: at 230 V a change of its current at turn-on comes back as large one
 * cycle later, by way of the ring, so that no cycle is like the one before.
 */
class EveryLawTest {

    private static final double LOSS_BAND = 0.05;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "step-down, boundary, 230, 33, 210",
        "step-down, fixed-duty, 230, 33, 210",
        "step-down, peak-current, 230, 33, 210",
        "step-up, fixed-duty, 120, 220, 32",
        "step-up, peak-current, 230, 420, 16.7",
        "step-up, fixed-off-time, 230, 420, 16.7"
    })
    void everyFigureAgrees(String topology, String law, int line, double string, double current) throws Exception {
        Lampproof.simulatorOrSkip();
        Files.writeString(folder.resolve("lamp.csv"), """
                quantity,min,typ,max,unit,note
                driver.topology,,%s,,,
                driver.control,,%s,,,
                line.voltage,,%d,,V,
                line.frequency,,50,,Hz,
                string.voltage,,%s,,V,
                string.current,,%s,,mA,
                """.formatted(topology, law, line, string, current));
        Lampproof proved = Lampproof.run(folder, "prove", "lamp.csv", "-o", "run");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        assertLosses();
    }

    private void assertLosses() throws IOException {
        assertThat(VerdictRows.rows(folder.resolve("run")))
                .filteredOn(row ->
                        row.get("figure").contains("loss") && row.get("verdict").equals("agrees"))
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> assertThat(Math.abs(number(row, "simulated") / number(row, "predicted") - 1))
                        .as(row.get("figure"))
                        .isLessThan(LOSS_BAND));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
