package lampproof.simulator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the log of a run says about it.
 *
 * @param failures what makes the run unusable, in the order of the log
 * @param remarks what the simulator warned of, ignored, redefined or noted, in the order of the log
 * @param measures the windows over which the simulator's own measures were made
 * @param stoppedAt the simulated time at which the simulator gave up [s], empty when it does not say so
 */
public record RunLog(
        List<Failure> failures, List<String> remarks, List<MeasureWindow> measures, OptionalDouble stoppedAt) {

    static final RunLog EMPTY = new RunLog(List.of(), List.of(), List.of(), OptionalDouble.empty());

    /**
     * Something that makes a run unusable.
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

    /**
     * Judges a log file, whether lampproof or the simulator itself has written it.
     *
     * @throws IOException if it cannot be read
     */
    public static RunLog read(Path log) throws IOException {
        try (Lines lines = Lines.of(log)) {
            return judge(lines);
        }
    }

    /** Judges the text of a log. */
    public static RunLog of(String text) {
        try (Lines lines = Lines.of(text)) {
            return judge(lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Why the run is unusable: the first cause that the log names, otherwise the first consequence. */
    public Optional<String> reason() {
        return failures.stream()
                .filter(Failure::cause)
                .findFirst()
                .or(() -> failures.stream().findFirst())
                .map(Failure::reason);
    }

    private static RunLog judge(Lines lines) throws IOException {
        LogJudge judge = new LogJudge();
        for (Optional<String> line = lines.next(); line.isPresent() && !judge.isTired(); line = lines.next()) {
            judge.hear(line.get());
        }
        return judge.log();
    }
}
