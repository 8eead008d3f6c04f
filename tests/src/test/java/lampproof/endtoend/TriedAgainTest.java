package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A deck whose step collapses runs once more with shorter steps, and whoever let it run is told. */
class TriedAgainTest {

    private static final String REMARK = ": the deck ran again with shorter steps: timestep too small at node low";

    /** The first line of a collapse as the simulator tells it, then the sentence of the deck, then an honest run. */
    private static final String COLLAPSING = """
            #!/bin/sh
            [ "$1" != --version ] || exec 'NGSPICE' --version
            echo 'doAnalyses: TRAN:  Timestep too small; time = 1e-05, timestep = 2e-19: trouble with node "low"' >&2
            echo >&2
            echo 'lampproof: tried again with shorter steps'
            exec 'NGSPICE' "$@"
            """;

    @TempDir
    private Path folder;

    @Test
    void simulateAndProveSayThatADeckRanAgain() throws Exception {
        String real = Lampproof.simulatorOrSkip().toString();
        Path collapsing = Files.writeString(folder.resolve("ngspice.sh"), COLLAPSING.replace("NGSPICE", real));
        Files.setPosixFilePermissions(collapsing, PosixFilePermissions.fromString("rwxr-xr-x"));
        Map<String, String> environment = Map.of("LAMPPROOF_NGSPICE", collapsing.toString());
        Files.writeString(folder.resolve("lamp.csv"), """
                quantity,min,typ,max,unit,note
                driver.topology,,step-up,,,
                line.voltage,,230,,V,
                line.frequency,,50,,Hz,
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """);
        Lampproof proved = Lampproof.run(folder, environment, "prove", "lamp.csv", "--decks", "crest", "-o", "run");
        assertThat(proved.exitCode()).as(proved.toString()).isZero();
        assertThat(proved.err()).contains("crest.cir" + REMARK);
        Lampproof simulated = Lampproof.run(folder, environment, "simulate", "run");
        assertThat(simulated.exitCode()).as(simulated.toString()).isZero();
        assertThat(simulated.err()).contains("crest.cir" + REMARK);
    }
}
