package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Faults of the string and surges: what was marched and what the simulator finds agree. */
class EventDecksTest {

    private static final String DECKS = "open-string,shorted-string,surge,power-up";
    private static final List<String> LAWS = List.of("boundary", "fixed-duty", "peak-current", "fixed-off-time");

    @TempDir
    private Path folder;

    @Test
    void everyFigureOfBothShippedExamplesAgrees() throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof proved = Lampproof.run(folder, "prove", "--decks", DECKS);
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        for (String example : List.of("stairwell-step-down", "stairwell-step-up")) {
            assertThat(VerdictRows.rows(folder.resolve("lampproof-run").resolve(example)))
                    .filteredOn(row -> !row.get("deck").isEmpty())
                    .hasSizeGreaterThan(25)
                    .allSatisfy(row -> assertThat(row.get("verdict")).isEqualTo("agrees"));
        }
    }

    @ParameterizedTest
    @MethodSource("lamps")
    @Tag("long")
    void everyLawAgreesWithBothConvertersAndBothWaves(String topology, String law, String wave) throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof proved = Lampproof.run(folder, "prove", spec(topology, law, wave), "--decks", DECKS);
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
    }

    private static Stream<Arguments> lamps() {
        return Stream.of("step-down", "step-up")
                .flatMap(topology -> LAWS.stream()
                        .flatMap(law ->
                                Stream.of("ring", "combination").map(wave -> Arguments.of(topology, law, wave))));
    }

    private String spec(String topology, String law, String wave) throws IOException {
        String string = topology.equals("step-up")
                ? "string.voltage,,420,,V,\nstring.current,,16.7,,mA,\n"
                : "string.voltage,,33,,V,\nstring.current,,210,,mA,\n";
        Files.writeString(
                folder.resolve("lamp.csv"),
                "quantity,min,typ,max,unit,note\nline.voltage,207,230,253,V,\nline.frequency,,50,,Hz,\n"
                        + "driver.topology,," + topology + ",,,\ndriver.control,," + law + ",,,\n"
                        + "surge.wave,," + wave + ",,,\n" + string);
        return "lamp.csv";
    }
}
