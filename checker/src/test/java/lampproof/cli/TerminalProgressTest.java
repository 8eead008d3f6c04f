package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import lampproof.simulator.SimulationJob;
import lampproof.simulator.SimulationOutcome;
import org.junit.jupiter.api.Test;

class TerminalProgressTest {

    private static final SimulationJob CREST = SimulationJob.of(Path.of("crest.cir"), 1e-3);
    private static final SimulationJob MAINS = SimulationJob.of(Path.of("mains.cir"), 20e-3);

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    @Test
    void oneBarShowsTheShareOfAllRunsAndIsWipedOff() {
        draw(true);
        List<String> drawn = text().lines().toList();
        assertThat(drawn.get(drawn.size() - 2))
                .contains("simulating", "75%", "1/2 runs", "mains")
                .hasSizeLessThan(80);
        assertThat(text()).endsWith("\r" + " ".repeat(79) + "\r").doesNotContain("\n");
    }

    @Test
    void nothingIsDrawnWhereThereIsNoTerminal() {
        draw(false);
        assertThat(text()).isEmpty();
    }

    /** The crest run completes, the mains run comes half way and is then told of once more, late. */
    private void draw(boolean isTerminal) {
        PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        try (TerminalProgress progress = TerminalProgress.on(stream, isTerminal, 2)) {
            progress.progress(CREST, 0.9e-3, CREST.stopTime());
            progress.finished(new SimulationOutcome(
                    CREST, SimulationOutcome.Kind.COMPLETED, "", List.of(), OptionalInt.of(0), 1.0, "ngspice-39"));
            progress.progress(MAINS, 10e-3, MAINS.stopTime());
            progress.progress(MAINS, 9e-3, MAINS.stopTime());
        }
    }

    private String text() {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
