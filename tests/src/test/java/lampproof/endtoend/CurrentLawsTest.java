package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The control laws that set a current, for both converters, through the real simulator, with the default tolerances. */
class CurrentLawsTest {

    private static final String STEP_DOWN = "string.voltage,,33,,V,\nstring.current,,210,,mA,\n";
    private static final String STEP_UP = "string.voltage,,420,,V,\nstring.current,,16.7,,mA,\n";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "step-down, peak-current",
        "step-down, fixed-off-time",
        "step-up, peak-current",
        "step-up, fixed-off-time"
    })
    void everyFigureAgrees(String converter, String law) throws Exception {
        Lampproof.simulatorOrSkip();
        Path spec = Files.writeString(folder.resolve("lamp.csv"), table(converter, law));
        Lampproof proved = Lampproof.run(folder, "prove", spec.toString(), "-o", "run");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        assertThat(losses()).as(proved.toString()).isGreaterThanOrEqualTo(10);
    }

    /** How many losses of a part were compared; each within its default tolerance of 5 %. */
    private long losses() throws IOException {
        return VerdictRows.rows(folder.resolve("run")).stream()
                .filter(row -> row.get("figure").contains("loss"))
                .filter(row -> row.get("verdict").equals("agrees"))
                .count();
    }

    private static String table(String converter, String law) {
        return "quantity,min,typ,max,unit,note\n"
                + "line.voltage,,230,,V,\nline.frequency,,50,,Hz,\n"
                + "driver.topology,," + converter + ",,,\ndriver.control,," + law + ",,,\n"
                + (converter.equals("step-up") ? STEP_UP : STEP_DOWN);
    }
}
