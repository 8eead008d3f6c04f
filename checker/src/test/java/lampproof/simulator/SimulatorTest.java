package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import lampproof.simulator.SimulationOutcome.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulatorTest {

    @TempDir
    Path folder;

    @Test
    void aCompletedRunLeavesDeckTableAndLogAndNothingElse() throws IOException {
        SimulationJob job = Decks.rc(folder);
        SimulationOutcome outcome = run(job);
        assertThat(outcome.kind()).isEqualTo(Kind.COMPLETED);
        assertThat(outcome.reason()).isEmpty();
        assertThat(outcome.exitStatus()).hasValue(0);
        assertThat(outcome.wallTime()).isBetween(1e-3, 30.0);
        assertThat(outcome.simulator()).startsWith("ngspice-");
        assertThat(names(folder)).containsExactly("rc.cir", "rc.csv", "rc.log");
    }

    /** v = V (1 - exp(-t / RC)), which is 6.3212 V after one time constant. */
    @Test
    void theTableIsTheOneOfTheCircuit() throws IOException {
        assertThat(lastRow(run(Decks.rc(folder)))[2]).isCloseTo(10 * (1 - Math.exp(-1)), within(1e-3));
    }

    /** The balance of volt-seconds over a period: 24 V less half of the drops of switch and diode, about 0.5 V. */
    @Test
    void aSwitchedStageCompletes() throws IOException {
        assertThat(lastRow(run(Decks.buck(folder)))[1]).isCloseTo(23.5, within(0.1));
    }

    @Test
    void whatTheSimulatorIgnoredIsRemarked() throws IOException {
        SimulationOutcome outcome = run(Decks.rc(folder, "D1 out 0 dd", ".model dd D(IS=1e-14 vds=60)"));
        assertThat(outcome.completed()).isTrue();
        assertThat(outcome.remarks()).contains("unrecognized parameter (vds) - ignored");
    }

    @Test
    void theStartUpFileOfTheUserIsNotRead() throws IOException {
        Files.writeString(folder.resolve(".spiceinit"), "quit 7\n");
        Simulator simulator = Simulators.realWith("HOME", folder.toString());
        assertThat(simulator.run(Decks.rc(folder), ProgressListener.NONE).completed())
                .isTrue();
    }

    @Test
    void aFolderNameWithBlanksAndAnIncludedFileAreFound() throws IOException {
        Path deep = Files.createDirectory(folder.resolve("my lamp (1)"));
        Files.writeString(deep.resolve("parts.inc"), "R9 out 0 1e6\n");
        assertThat(run(Decks.rc(deep, ".include parts.inc")).reason()).isEmpty();
    }

    @Test
    void aSimulatorThatWaitsForAKeyFindsTheEndOfItsInput() throws IOException {
        Simulator asking = Simulators.behind(folder, "read answer; exec \"$NGSPICE\" \"$@\"");
        SimulationOutcome outcome = asking.run(Decks.rc(folder).withTimeLimit(10), ProgressListener.NONE);
        assertThat(outcome.reason()).isEmpty();
    }

    @Test
    void progressIsToldInOrderAndKeptOutOfTheLogAndTheEndIsTold() throws IOException {
        List<Double> times = Collections.synchronizedList(new ArrayList<>());
        List<SimulationOutcome> ends = new ArrayList<>();
        SimulationJob job = longer(folder);
        SimulationOutcome outcome = Simulators.realOrSkip().run(job, new ProgressListener() {
            @Override
            public void progress(SimulationJob told, double reached, double stop) {
                assertThat(told).isEqualTo(job);
                assertThat(stop).isEqualTo(job.stopTime());
                times.add(reached);
            }

            @Override
            public void finished(SimulationOutcome end) {
                ends.add(end);
            }
        });
        assertThat(outcome.reason()).isEmpty();
        assertThat(times).isNotEmpty().isSorted().allMatch(time -> time > 0 && time <= job.stopTime());
        assertThat(ends).containsExactly(outcome);
        assertThat(Files.readString(job.logFile()))
                .contains("Circuit: * a capacitor charged", "No. of Data Rows")
                .doesNotContain("Reference value");
    }

    @Test
    void twoRunsOfOneTemplateAtOnceKeepTheirResultsApart() throws IOException {
        Path low = Files.createDirectory(folder.resolve("low"));
        Path high = Files.createDirectory(folder.resolve("high"));
        List<SimulationJob> jobs = List.of(
                Decks.changedRc(low, "PULSE(0 10 0 1n 1n 1 2)", "48"),
                Decks.changedRc(high, "PULSE(0 10 0 1n 1n 1 2)", "72"));
        List<SimulationOutcome> outcomes =
                new SimulationBatch(Simulators.realOrSkip(), 2).run(jobs, ProgressListener.NONE);
        assertThat(lastRow(outcomes.get(0))[1]).isEqualTo(48);
        assertThat(lastRow(outcomes.get(1))[1]).isEqualTo(72);
    }

    @Test
    void anotherRunOfTheSameDeckInTheSameFolderIsRefused() throws IOException {
        SimulationJob job = Decks.rc(folder);
        Path other = Files.createDirectory(folder.resolve(".rc-1"));
        Files.writeString(job.tableFile(), "of the other run");
        SimulationOutcome outcome = run(job);
        assertThat(outcome.kind()).isEqualTo(Kind.NOT_RUN);
        assertThat(outcome.reason())
                .isEqualTo(other + ": another simulation is running here; if not, remove this folder");
        assertThat(job.tableFile()).hasContent("of the other run");
    }

    @Test
    void whatAKilledProcessLeftIsClearedAway() throws IOException, InterruptedException {
        Process gone = new ProcessBuilder("true").start();
        gone.waitFor();
        Path left = Files.createDirectory(folder.resolve(".rc-" + gone.pid()));
        Files.writeString(left.resolve("rc.csv"), "half a table");
        assertThat(run(Decks.rc(folder)).completed()).isTrue();
        assertThat(names(folder)).containsExactly("rc.cir", "rc.csv", "rc.log");
    }

    @Test
    void aSimulatorThatHasVanishedIsMissingAndNotFailed() throws IOException {
        Simulator simulator = Simulators.behind(folder, "exit 0");
        Files.delete(simulator.program());
        SimulationOutcome outcome = simulator.run(Decks.rc(folder), ProgressListener.NONE);
        assertThat(outcome.kind()).isEqualTo(Kind.SIMULATOR_MISSING);
        assertThat(outcome.finding().next()).contains("apt-get install -y ngspice");
    }

    /** The deck of 1 ms stretched to 20 ms with steps of 0.1 us, long enough to tell its progress. */
    private static SimulationJob longer(Path folder) throws IOException {
        String text = Decks.text("rc").replace(".tran 1e-6 1e-3 0 1e-6", ".tran 1e-6 2e-2 0 1e-7");
        return Decks.job(folder, "rc", text, 2e-2);
    }

    private static SimulationOutcome run(SimulationJob job) {
        return Simulators.realOrSkip().run(job, ProgressListener.NONE);
    }

    private static double[] lastRow(SimulationOutcome outcome) throws IOException {
        assertThat(outcome.reason()).isEmpty();
        List<String> lines = Files.readAllLines(outcome.job().tableFile());
        return Stream.of(lines.get(lines.size() - 1).strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
