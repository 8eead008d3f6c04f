package lampproof.simulator;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The findings of a log about its run.
 *
 * @param failures failures that make the run invalid, in the order of the log
 * @param remarks warnings and notes of the simulator, in the order of the log
 * @param measures the windows over which the simulator's own measures were made
 * @param stoppedAt the simulated time at which the simulator gave up [s], empty when it has no stop time
 */
public record RunLog(
        List<Failure> failures, List<String> remarks, List<MeasureWindow> measures, OptionalDouble stoppedAt) {

    static final RunLog EMPTY = new RunLog(List.of(), List.of(), List.of(), OptionalDouble.empty());

    /**
     * A failure that makes a run invalid.
     *
     * @param reason what it is, in one clause
     * @param cause whether it is a cause, not the consequence of another failure
     */
    public record Failure(String reason, boolean cause) {}

    /** Keeps the lists from being changed. */
    public RunLog {
        failures = List.copyOf(failures);
        remarks = List.copyOf(remarks);
        measures = List.copyOf(measures);
    }

    /** Why the run is unusable: the first cause that the log names, otherwise the first consequence. */
    public Optional<String> reason() {
        return failures.stream()
                .filter(Failure::cause)
                .findFirst()
                .or(() -> failures.stream().findFirst())
                .map(Failure::reason);
    }
}
