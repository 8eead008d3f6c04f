package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoppedProgramTest {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private Process program;

    @BeforeEach
    void startTheProgram() throws IOException, InterruptedException {
        Simulators.realOrSkip();
        Decks.slow(folder);
        program = new ProcessBuilder(
                        // A test in the background or under nohup inherits ignored signals.
                        "env",
                        "--default-signal=INT,TERM,HUP",
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        StoppedProgram.class.getName(),
                        folder.toString())
                .inheritIO()
                .start();
        await(this::isAtWork);
    }

    @AfterEach
    void endTheProgram() {
        if (program != null) {
            program.descendants().forEach(ProcessHandle::destroyForcibly);
            program.destroyForcibly();
        }
    }

    /** 128 and the number of the signal, as POSIX shells tell it. */
    @ParameterizedTest
    @CsvSource({"INT, 130", "TERM, 143", "HUP, 129"})
    void aProgramThatIsToldToStopTakesItsSimulatorAndFolderWithIt(String signal, int status)
            throws IOException, InterruptedException {
        List<ProcessHandle> simulators = simulators();
        signal(signal);
        assertThat(program.waitFor(10, TimeUnit.SECONDS)).isTrue();
        assertThat(program.exitValue()).isEqualTo(status);
        assertThat(simulators).hasSize(1).noneMatch(ProcessHandle::isAlive);
        assertThat(names()).containsExactly("slow.cir");
    }

    @Test
    void theSimulatorOfAProgramThatIsKilledOutrightEndsByItself() throws IOException, InterruptedException {
        List<ProcessHandle> simulators = simulators();
        signal("KILL");
        program.waitFor(10, TimeUnit.SECONDS);
        await(() -> simulators.stream().noneMatch(ProcessHandle::isAlive));
        assertThat(names()).doesNotContain("slow.csv");
    }

    private void signal(String signal) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-" + signal, String.valueOf(program.pid()))
                .start()
                .waitFor();
    }

    private boolean isAtWork() {
        return Files.exists(folder.resolve(".slow-" + program.pid()).resolve(".messages"))
                && !simulators().isEmpty();
    }

    private List<ProcessHandle> simulators() {
        return program.descendants()
                .filter(child -> child.info().command().orElse("").endsWith("ngspice"))
                .toList();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        Instant end = Instant.now().plus(PATIENCE);
        while (!condition.getAsBoolean()) {
            assertThat(Instant.now()).isBefore(end);
            Thread.sleep(20);
        }
    }
}
