package lampproof.simulator;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lampproof.simulator.SimulationOutcome.Kind;

/**
 * The circuit simulator ngspice as a separate program, one process per run.
 *
 * <p>A process, not a library: its start takes some 20 ms, and a crash, a leak or an endless run does not affect
 * lampproof.
 */
public final class Simulator {

    private final Path program;
    private final String version;
    private final Map<String, String> environment;

    private Simulator(Path program, String version, Map<String, String> environment) {
        this.program = program;
        this.version = version;
        this.environment = Map.copyOf(environment);
    }

    /**
     * The simulator named by {@code LAMPPROOF_NGSPICE}, otherwise the {@code ngspice} on the {@code PATH}.
     *
     * @param environment the environment variables to search, which the simulator gets as well
     * @throws lampproof.fault.UserFault without verdict, naming the command that installs it, if there is none
     */
    public static Simulator locate(Map<String, String> environment) {
        Path program = SimulatorSearch.program(environment);
        return new Simulator(program, SimulatorSearch.version(program), environment);
    }

    /** The program file. */
    public Path program() {
        return program;
    }

    /** Name and version, such as {@code ngspice-39}; another version may move correct results. */
    public String version() {
        return version;
    }

    /**
     * Simulates one deck and judges the run.
     *
     * <p>Table and log of earlier runs are removed first. A completed run leaves both beside the deck, a failed one
     * only the log; anything else that the deck writes is dropped. Interrupting the thread ends the simulator.
     *
     * @param listener also receives the end, whatever it is
     */
    public SimulationOutcome run(SimulationJob job, ProgressListener listener) {
        SimulationOutcome outcome = prepared(job, listener);
        listener.finished(outcome);
        return outcome;
    }

    private SimulationOutcome prepared(SimulationJob job, ProgressListener listener) {
        if (!Files.isRegularFile(job.deck()) || !Files.isReadable(job.deck())) {
            return unstarted(job, Kind.NOT_RUN, "there is no readable deck " + job.deck());
        }
        try (PrivateFolder folder = PrivateFolder.create(job)) {
            folder.removeOldOutputs();
            return started(job, folder, listener);
        } catch (FileAlreadyExistsException e) {
            return unstarted(job, Kind.NOT_RUN, e.getMessage());
        } catch (IOException e) {
            return unstarted(job, Kind.NOT_RUN, cannotWrite(job, e));
        }
    }

    private SimulationOutcome started(SimulationJob job, PrivateFolder folder, ProgressListener listener) {
        Process process;
        try {
            process = command(job, folder).start();
        } catch (IOException e) {
            return unstarted(job, Kind.SIMULATOR_MISSING, "the simulator cannot be started (" + e.getMessage() + ")");
        }
        return judged(job, folder, SimulatorProcess.watch(process, job, folder, listener));
    }

    /**
     * The command line, without {@code -o}: with it ngspice does not print its progress. {@code -n} keeps the user's
     * own start-up file out. Without {@code HOME} ngspice 39 ends with a memory fault.
     */
    private ProcessBuilder command(SimulationJob job, PrivateFolder folder) {
        String deck = "../" + job.deck().getFileName();
        ProcessBuilder builder = new ProcessBuilder(program.toString(), "-n", "-b", deck)
                .directory(folder.path().toFile())
                .redirectOutput(folder.output().toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        builder.environment().putIfAbsent("HOME", folder.path().toString());
        builder.environment().put("LC_ALL", "C");
        return builder;
    }

    private SimulationOutcome judged(SimulationJob job, PrivateFolder folder, RunEnd end) {
        if (end.cause() == RunEnd.Cause.SHUTDOWN) {
            return ended(job, RunLog.EMPTY, end, Optional.of("lampproof was stopped"));
        }
        try {
            RunLog log = LogReader.read(folder.gatherLog());
            Optional<String> refusal = Acceptance.refusal(job, end, log, folder.table());
            folder.keep(refusal.isEmpty());
            return ended(job, log, end, refusal);
        } catch (IOException e) {
            return ended(job, RunLog.EMPTY, end, Optional.of(cannotWrite(job, e)));
        } finally {
            if (end.cause() == RunEnd.Cause.INTERRUPT) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private SimulationOutcome ended(SimulationJob job, RunLog log, RunEnd end, Optional<String> refusal) {
        return new SimulationOutcome(
                job,
                refusal.isEmpty() ? Kind.COMPLETED : Kind.FAILED,
                refusal.orElse(""),
                log.remarks(),
                OptionalInt.of(end.exitStatus()),
                end.wallTime(),
                version);
    }

    private SimulationOutcome unstarted(SimulationJob job, Kind kind, String reason) {
        return SimulationOutcome.unstarted(job, kind, reason, version);
    }

    private static String cannotWrite(SimulationJob job, IOException e) {
        return "cannot work in " + job.folder() + " (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")";
    }
}
