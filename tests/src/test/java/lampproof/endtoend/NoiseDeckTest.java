package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the switching leaves at the mains terminals: the series of one cycle and the simulator agree. */
class NoiseDeckTest {

    @TempDir
    private Path folder;

    @Test
    void everyLevelOfBothShippedExamplesAgrees() throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof proved = Lampproof.run(folder, "prove", "--decks", "noise");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        for (String example : List.of("stairwell-step-down", "stairwell-step-up")) {
            Path run = folder.resolve("lampproof-run").resolve(example);
            assertThat(VerdictRows.figures(run, "noise", "agrees"))
                    .containsExactly("noise.level.fundamental", "noise.level.harmonics", "noise.margin.quasi_peak");
        }
    }
}
