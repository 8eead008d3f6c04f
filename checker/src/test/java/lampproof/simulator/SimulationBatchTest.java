package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lampproof.simulator.SimulationOutcome.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulationBatchTest {

    @TempDir
    Path folder;

    @Test
    void oneFailingRunDoesNotStopTheOthersAndTheOrderIsThatOfTheJobs() throws IOException {
        List<SimulationJob> jobs = List.of(
                Decks.rc(folder, "V8 in 0 5"), Decks.buck(folder), SimulationJob.of(folder.resolve("mains.cir"), 0.02));
        List<SimulationOutcome> outcomes =
                SimulationBatch.onAllCores(Simulators.realOrSkip()).run(jobs, ProgressListener.NONE);
        assertThat(outcomes).extracting(SimulationOutcome::job).isEqualTo(jobs);
        assertThat(outcomes)
                .extracting(SimulationOutcome::kind)
                .containsExactly(Kind.FAILED, Kind.COMPLETED, Kind.NOT_RUN);
    }

    @Test
    void theLongestRunStartsFirst() throws IOException {
        List<String> ends = Collections.synchronizedList(new ArrayList<>());
        List<SimulationJob> jobs = List.of(Decks.rc(folder), Decks.buck(folder));
        new SimulationBatch(Simulators.realOrSkip(), 1).run(jobs, new ProgressListener() {
            @Override
            public void progress(SimulationJob job, double reached, double stop) {}

            @Override
            public void finished(SimulationOutcome outcome) {
                ends.add(outcome.job().name());
            }
        });
        assertThat(ends).containsExactly("buck", "rc");
    }

    @Test
    void runsGoOnAtTheSameTime() throws IOException {
        Simulator meeting = Simulators.behind(folder, """
                touch ../"$(basename "$3" .cir)".here
                for i in $(seq 80); do
                  if [ -e ../rc.here ] && [ -e ../buck.here ]; then exec "$NGSPICE" "$@"; fi
                  sleep 0.25
                done
                exit 9""");
        List<SimulationJob> jobs = List.of(Decks.rc(folder), Decks.buck(folder));
        assertThat(new SimulationBatch(meeting, 2).run(jobs, ProgressListener.NONE))
                .allMatch(SimulationOutcome::completed);
    }

    @Test
    void anInterruptedBatchEndsWhatRunsAndDoesNotStartTheRest() throws IOException, InterruptedException {
        SimulationBatch batch = new SimulationBatch(Simulators.realOrSkip(), 1);
        List<SimulationJob> jobs = List.of(Decks.slow(folder), Decks.rc(folder));
        Thread main = new Thread(() -> assertInterrupted(batch, jobs), "batch");
        List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
        main.setUncaughtExceptionHandler((thread, fault) -> faults.add(fault));
        main.start();
        while (Files.notExists(folder.resolve(".slow-" + ProcessHandle.current().pid()))) {
            Thread.sleep(10);
        }
        main.interrupt();
        main.join(20_000);
        assertThat(main.isAlive()).isFalse();
        assertThat(faults).isEmpty();
    }

    private static void assertInterrupted(SimulationBatch batch, List<SimulationJob> jobs) {
        List<SimulationOutcome> outcomes = batch.run(jobs, ProgressListener.NONE);
        assertThat(Thread.currentThread().isInterrupted()).isTrue();
        assertThat(outcomes.get(0).reason()).startsWith("interrupted");
        assertThat(outcomes.get(1).kind()).isEqualTo(Kind.NOT_RUN);
        assertThat(outcomes.get(1).reason()).isEqualTo("the batch was interrupted before it");
    }

    @Test
    void twoRunsThatWouldWriteTheSameFileAreRefused() throws IOException {
        SimulationBatch batch = new SimulationBatch(Simulators.realOrSkip(), 1);
        SimulationJob job = Decks.rc(folder);
        assertThatThrownBy(() -> batch.run(List.of(job, job.withTimeLimit(1)), ProgressListener.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("two simulations would write " + job.tableFile());
    }
}
