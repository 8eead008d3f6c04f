package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The real simulator, made to fail in every way that is known; many of these end with status 0 and a table. */
class FailureTableTest {

    private static final String HUGE_STEP = "B1 b 0 V=time>500u ? (v(b)>0.5 ? -1e9 : 1e9) : 0\nL1 b a 1n\nC2 a 0 1p";

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            unknown element letter      | Y9 out 0 3                               | y9 out 0 3
            garbage value               | R9 out 0 abc                             | model abc is missing
            missing model               | D9 out 0 nomodel                         | model nomodel is missing
            undefined parameter         | R9 out 0 {nope}                          | nope
            missing subcircuit          | X9 out 0 nosub                           | nosub
            missing include             | .include parts.inc                       | included file parts.inc is missing
            missing library             | .lib parts.lib typical                   | included file parts.lib is missing
            unknown directive           | .bogus line here                         | .bogus line here
            repeated part               | R1 out 0 50                              | r1 out 0 50
            missing resistor value      | R9 out 0                                 | resistor r9 has no value
            contradictory sources       | V8 in 0 5                                | singular matrix
            floating node               | C8 in r 1n\\nC9 r 0 1n                    | singular matrix, check node r
            loop of inductors           | L8 in x 1m\\nL9 in x 1m\\nR9 x 0 1000      | singular matrix
            points on the print grid    | .options interp                          | the option interp
            measure out of its interval | .meas tran vx find v(out) at=5m          | measure vx failed, find(AT)
            level never reached         | .meas tran tc when v(in)=400 rise=1      | measure tc failed, when(WHEN)
            clipped window              | .meas tran vr RMS v(in) from=0.2m to=60m | requested 200 us to 60.0 ms and got
            """)
    void aLineThatSpoilsTheCircuitFailsTheRun(String name, String line, String reason) throws IOException {
        SimulationJob job = Decks.rc(folder, line.replace("\\n", "\n"));
        assertFailed(job, reason);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            bad analysis        | .tran 1e-6 1e-3 0 1e-6 | .tran abc              | .tran abc
            no analysis         | .tran 1e-6 1e-3 0 1e-6 | * none                 | the deck requests vector in, which the circuit does not contain
            misspelt vector     | v(in) v(out)           | v(in) v(nope)          | the deck requests vector nope, which the circuit does not contain
            unknown command     | wrdata                 | nosuchcmd              | does not know the command nosuchcmd
            missing folder      | wrdata rc.csv          | wrdata deep/rc.csv     | file or folder for deep/rc.csv
            other table name    | wrdata rc.csv          | wrdata other.csv       | the deck wrote no table rc.csv
            no end of the block | quit 0                 | * on and on            | the simulator ended with status 1 and
            other exit status   | quit 0                 | quit 3                 | the simulator ended with status 3 and
            older simulator     | $sim_status            | $no_status             | no_status: no such variable
            shorter analysis    | .tran 1e-6 1e-3        | .tran 1e-6 5e-4        | stopped at 500 us of 1.00 ms (50.0 %)
            """)
    void aDeckThatIsWrongFailsTheRun(String name, String part, String replacement, String reason) throws IOException {
        assertFailed(Decks.changedRc(folder, part, replacement), reason);
    }

    @Test
    void aTimeStepThatGetsTooSmallIsToldWithTimeShareAndNode() throws IOException {
        SimulationOutcome outcome = assertFailed(Decks.rc(folder, HUGE_STEP), "timestep too small at node b");
        String told = "stopped at 500 us of 1.00 ms (50.0 %), timestep too small at node b";
        assertThat(outcome.reason()).isEqualTo(told);
        assertThat(outcome.finding().text())
                .isEqualTo("rc: the simulation failed: " + told + "; read " + folder.resolve("rc.log"));
    }

    @Test
    void aTimeStepThatGetsTooSmallIsToldAlsoWhenTheDeckIgnoresIt() throws IOException {
        SimulationJob job = Decks.job(
                folder,
                "rc",
                Decks.text("rc").replace("* more lines", HUGE_STEP).replace("quit 1", "* never mind"),
                Decks.RC_STOP);
        SimulationOutcome outcome = assertFailed(job, "stopped at 500 us of 1.00 ms (50.0 %), timestep too small");
        assertThat(outcome.exitStatus()).hasValue(0);
    }

    @Test
    void aRunThatIsPausedIsToldWithItsTime() throws IOException {
        SimulationJob job = Decks.changedRc(folder, "\nrun\n", "\nstop when time > 250u\nrun\n");
        SimulationOutcome outcome = assertFailed(job, "the run was paused before its end");
        assertThat(outcome.reason()).startsWith("stopped at 250").contains(" us of 1.00 ms (25.");
    }

    @Test
    void anEmptyDeckFails() throws IOException {
        assertFailed(Decks.job(folder, "rc", "", Decks.RC_STOP), "the simulator ended with status 1");
    }

    @Test
    void aDeckThatIsNotThereIsNotRun() {
        SimulationJob job = SimulationJob.of(folder.resolve("mains.cir"), 1.0);
        SimulationOutcome outcome = Simulators.realOrSkip().run(job, ProgressListener.NONE);
        assertThat(outcome.kind()).isEqualTo(SimulationOutcome.Kind.NOT_RUN);
        assertThat(outcome.finding().text())
                .isEqualTo("mains: the simulation was not run: there is no readable deck " + job.deck());
        assertThat(outcome.exitStatus()).isEmpty();
        assertThat(outcome.log()).isEmpty();
    }

    @Test
    void aFullDiskFailsTheRunAlthoughTheSimulatorSaysNotAWord() throws IOException {
        Simulator full = Simulators.behind(folder, "trap '' XFSZ\nulimit -f 20\nexec \"$NGSPICE\" \"$@\"");
        SimulationOutcome outcome = assertFailed(full, Decks.rc(folder), "the last row of the table is cut");
        assertThat(outcome.exitStatus()).hasValue(0);
        assertThat(outcome.remarks()).noneMatch(remark -> remark.contains("write"));
    }

    @Test
    void aFileSizeLimitOfTheSystemFailsTheRun() throws IOException {
        Simulator limited = Simulators.behind(folder, "ulimit -f 20\nexec \"$NGSPICE\" \"$@\"");
        assertFailed(limited, Decks.rc(folder), "the simulator was ended by signal 25 (file too large)");
    }

    @Test
    void aMemoryLimitOfTheSystemFailsTheRun() throws IOException {
        Simulator limited = Simulators.behind(folder, "ulimit -v 100000\nexec \"$NGSPICE\" \"$@\"");
        assertFailed(limited, Decks.slow(folder), "the memory was too small");
    }

    @ParameterizedTest
    @CsvSource({"HUP, 1", "INT, 2", "KILL, 9 (kill)", "TERM, 15 (terminate)"})
    void aSignalFromOutsideFailsTheRun(String signal, String reason) throws Exception {
        assumeTrue(isHeeded(signal), "these tests were started in the background, where " + signal + " is ignored");
        Simulator killed = Simulators.behind(folder, "(sleep 0.3; kill -" + signal + " $$) & exec \"$NGSPICE\" \"$@\"");
        assertFailed(killed, Decks.slow(folder), "the simulator was ended by signal " + reason);
    }

    /** A signal that is ignored here is ignored by every process started from here. */
    private static boolean isHeeded(String signal) throws IOException, InterruptedException {
        return new ProcessBuilder("sh", "-c", "kill -" + signal + " $$").start().waitFor() != 0;
    }

    private SimulationOutcome assertFailed(SimulationJob job, String reason) throws IOException {
        return assertFailed(Simulators.realOrSkip(), job, reason);
    }

    /** Failed for the reason given, and no table is left, not even one from before. */
    private static SimulationOutcome assertFailed(Simulator simulator, SimulationJob job, String reason)
            throws IOException {
        Files.writeString(job.tableFile(), " time v(in) v(out)\n 1.0e-3 10 6.32\n");
        SimulationOutcome outcome = simulator.run(job, ProgressListener.NONE);
        assertThat(outcome.reason()).contains(reason);
        assertThat(outcome.kind()).isEqualTo(SimulationOutcome.Kind.FAILED);
        assertThat(job.tableFile()).doesNotExist();
        assertThat(outcome.log()).contains(job.logFile());
        return outcome;
    }
}
