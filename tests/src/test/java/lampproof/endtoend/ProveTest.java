package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProveTest {

    @TempDir
    private Path folder;

    @Test
    void everyFigureOfBothShippedExamplesAgrees() throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof proved = Lampproof.run(folder, "prove");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        assertThat(proved.out()).endsWith("""
                Open next: lampproof-run/stairwell-step-down/report.html
                Open next: lampproof-run/stairwell-step-up/report.html
                """);
        for (String example : new String[] {"stairwell-step-down", "stairwell-step-up"}) {
            Path run = folder.resolve("lampproof-run").resolve(example);
            assertThat(VerdictRows.rows(run))
                    .hasSizeGreaterThan(50)
                    .allSatisfy(row -> assertThat(row.get("verdict")).isIn("agrees", "predicted only"));
            assertThat(Files.readString(run.resolve("junit.xml"))).contains("failures=\"0\" errors=\"0\"");
            assertThat(run.resolve("bom.csv")).content().contains("bus capacitor,47 nF,630 V,");
        }
    }
}
