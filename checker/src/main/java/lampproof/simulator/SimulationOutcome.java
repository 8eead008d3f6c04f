package lampproof.simulator;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lampproof.fault.Finding;

/**
 * The outcome of one simulation.
 *
 * @param job the simulation
 * @param kind whether it completed, failed, was not run, or found no simulator
 * @param reason why it did not complete, in one clause; empty when it did
 * @param remarks what the simulator warned of or ignored, in the order of the log
 * @param exitStatus the exit status of the simulator, 128 and the signal number when a signal ended it; empty when it
 *     was not started
 * @param wallTime the wall time that the run took [s]
 * @param simulator the name and version of the simulator, such as {@code ngspice-39}
 */
public record SimulationOutcome(
        SimulationJob job,
        Kind kind,
        String reason,
        List<String> remarks,
        OptionalInt exitStatus,
        double wallTime,
        String simulator) {

    /** The four outcomes of a simulation. */
    public enum Kind {
        /** The table is complete and may be measured. */
        COMPLETED,
        /** The simulator ran and its results are not valid. */
        FAILED,
        /** The simulator was not started for this job. */
        NOT_RUN,
        /** The simulator could not be started at all. */
        SIMULATOR_MISSING
    }

    /** Keeps the remarks from being changed. */
    public SimulationOutcome {
        remarks = List.copyOf(remarks);
    }

    static SimulationOutcome unstarted(SimulationJob job, Kind kind, String reason, String simulator) {
        return new SimulationOutcome(job, kind, reason, List.of(), OptionalInt.empty(), 0.0, simulator);
    }

    /** Whether the table is complete and may be measured. */
    public boolean completed() {
        return kind == Kind.COMPLETED;
    }

    /** The log beside the deck; empty when this simulation left none. */
    public Optional<Path> log() {
        return exitStatus.isPresent() ? Optional.of(job.logFile()).filter(Files::isRegularFile) : Optional.empty();
    }

    /**
     * Why no figure of this run can be judged, and what to do about it.
     *
     * @throws IllegalStateException if the run completed
     */
    public Finding finding() {
        return switch (kind) {
            case COMPLETED -> throw new IllegalStateException(job.name() + " completed");
            case FAILED ->
                Finding.of(
                        "the simulation failed: " + reason,
                        job.name(),
                        log().map(file -> "read " + file).orElse(""));
            case NOT_RUN -> Finding.of("the simulation was not run: " + reason, job.name(), "");
            case SIMULATOR_MISSING -> Finding.of(reason, job.name(), SimulatorSearch.REMEDY);
        };
    }
}
