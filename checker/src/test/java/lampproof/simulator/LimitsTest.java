package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lampproof.simulator.SimulationOutcome.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LimitsTest {

    @TempDir
    Path folder;

    @AfterEach
    void nothingIsLeftAtWork() throws IOException {
        try (var files = Files.list(folder)) {
            assertThat(files.filter(Files::isDirectory)).isEmpty();
        }
    }

    @Test
    void aRunThatPassesItsTimeLimitIsEndedAndToldWithItsTime() throws IOException {
        SimulationOutcome outcome =
                run(Simulators.realOrSkip(), Decks.slow(folder).withTimeLimit(3));
        assertThat(outcome.kind()).isEqualTo(Kind.FAILED);
        assertThat(outcome.reason()).matches("timed out after 3 s at t = [\\d.]+ [mun]s of 1\\.00 s");
        assertThat(outcome.wallTime()).isBetween(3.0, 20.0);
        assertThat(outcome.job().logFile()).exists();
    }

    @Test
    void aRunThatWritesWithoutEndIsEnded() throws IOException {
        String deck = Decks.text("rc").replace("\nrun\n", "\nwhile 1\necho run-away run-away run-away\nend\n");
        SimulationJob job = Decks.job(folder, "rc", deck, Decks.RC_STOP).withSizeLimit(50_000);
        SimulationOutcome outcome = run(Simulators.realOrSkip(), job);
        assertThat(outcome.reason()).isEqualTo("wrote more than 50000 bytes");
    }

    @Test
    void aTableThatIsTooLongFailsTheRunEvenWhenItIsWhole() throws IOException {
        SimulationOutcome outcome =
                run(Simulators.realOrSkip(), Decks.buck(folder).withSizeLimit(100_000));
        assertThat(outcome.reason()).startsWith("wrote more than 100000 bytes");
        assertThat(outcome.job().tableFile()).doesNotExist();
    }

    @Test
    void everythingThatTheSimulatorHasStartedEndsWithIt() throws IOException {
        Simulator simulator = Simulators.behind(
                folder, "sleep 300 & echo $! > ../pids; \"$NGSPICE\" \"$@\" & echo $! >> ../pids; wait");
        run(simulator, Decks.slow(folder).withTimeLimit(0.5));
        assertThat(processes()).hasSize(2).noneMatch(LimitsTest::isAlive);
    }

    @Test
    void aSimulatorThatDoesNotHeedTheRequestToEndIsKilled() throws IOException {
        Simulator simulator =
                Simulators.behind(folder, "trap '' TERM; echo $$ > ../pids; while true; do sleep 0.1; done");
        SimulationOutcome outcome = run(simulator, Decks.slow(folder).withTimeLimit(0.3));
        assertThat(outcome.reason()).isEqualTo("timed out after 0.3 s");
        assertThat(outcome.exitStatus()).hasValue(137);
        assertThat(processes()).hasSize(1).noneMatch(LimitsTest::isAlive);
    }

    @Test
    void anInterruptedThreadEndsItsSimulatorAndStaysInterrupted() throws IOException, InterruptedException {
        Simulator simulator = Simulators.behind(folder, "echo $$ > ../pids; exec \"$NGSPICE\" \"$@\"");
        SimulationJob job = Decks.slow(folder);
        boolean[] interrupted = new boolean[1];
        Thread thread = new Thread(() -> {
            simulator.run(job, (same, reached, stop) -> Thread.currentThread().interrupt());
            interrupted[0] = Thread.currentThread().isInterrupted();
        });
        thread.start();
        thread.join(20_000);
        assertThat(thread.isAlive()).isFalse();
        assertThat(interrupted[0]).isTrue();
        assertThat(processes()).hasSize(1).noneMatch(LimitsTest::isAlive);
        assertThat(job.tableFile()).doesNotExist();
    }

    @Test
    void aListenerThatFailsEndsTheSimulatorToo() throws IOException {
        Simulator simulator = Simulators.behind(folder, "echo $$ > ../pids; exec \"$NGSPICE\" \"$@\"");
        SimulationJob job = Decks.slow(folder);
        ProgressListener failing = (same, reached, stop) -> {
            throw new IllegalStateException("no ear");
        };
        assertThatThrownBy(() -> simulator.run(job, failing)).hasMessage("no ear");
        assertThat(processes()).hasSize(1).noneMatch(LimitsTest::isAlive);
    }

    private static SimulationOutcome run(Simulator simulator, SimulationJob job) {
        return simulator.run(job, ProgressListener.NONE);
    }

    private List<Long> processes() throws IOException {
        return Files.readAllLines(folder.resolve("pids")).stream()
                .map(Long::valueOf)
                .toList();
    }

    private static boolean isAlive(long process) {
        return ProcessHandle.of(process).map(ProcessHandle::isAlive).orElse(false);
    }
}
