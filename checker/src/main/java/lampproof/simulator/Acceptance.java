package lampproof.simulator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lampproof.unit.PlainNumber;

/**
 * The rule by which a run is accepted; the exit status is not sufficient, since ngspice ends with status 0 after many
 * failures.
 */
final class Acceptance {

    /** How much of the stop time may be missing, for rounding in the table [-]. */
    private static final double ROUNDING = 1e-9;

    private static final int SIGNALLED = 128;
    private static final Map<Integer, String> SIGNALS =
            Map.of(6, "abort", 9, "kill", 11, "memory fault", 15, "terminate", 25, "file too large");

    private final SimulationJob job;
    private final RunEnd end;
    private final RunLog log;
    private final Path table;

    private Acceptance(SimulationJob job, RunEnd end, RunLog log, Path table) {
        this.job = job;
        this.end = end;
        this.log = log;
        this.table = table;
    }

    /**
     * Why a run is not accepted, empty when it is.
     *
     * @throws IOException if deck or table cannot be read
     */
    static Optional<String> refusal(SimulationJob job, RunEnd end, RunLog log, Path table) throws IOException {
        return new Acceptance(job, end, log, table).refusal();
    }

    private Optional<String> refusal() throws IOException {
        if (end.cause() != RunEnd.Cause.ITSELF) {
            return Optional.of(cutShort());
        }
        if (end.exitStatus() > SIGNALLED) {
            return Optional.of("the simulator was ended by signal " + signal() + at());
        }
        if (log.reason().isPresent()) {
            return Optional.of(stopped() + log.reason().get());
        }
        if (end.exitStatus() != 0) {
            return Optional.of("the simulator ended with status " + end.exitStatus()
                    + " and without a message; a deck ends its control block with 'quit 0'");
        }
        Optional<String> fault = tableFault();
        return fault.isPresent() ? fault : measureFault();
    }

    private String cutShort() {
        return switch (end.cause()) {
            case TIME_LIMIT -> "timed out after " + TimeText.seconds(job.timeLimit()) + at();
            case SIZE_LIMIT -> "wrote more than " + job.sizeLimit() + " bytes" + at();
            case INTERRUPT -> "interrupted" + at();
            case ITSELF, SHUTDOWN -> throw new IllegalStateException(end.cause() + " is judged elsewhere");
        };
    }

    private String at() {
        return end.reached().isPresent()
                ? " at t = " + TimeText.of(end.reached().getAsDouble()) + " of " + TimeText.of(job.stopTime())
                : "";
    }

    private String signal() {
        int number = end.exitStatus() - SIGNALLED;
        return SIGNALS.containsKey(number) ? number + " (" + SIGNALS.get(number) + ")" : String.valueOf(number);
    }

    /** Where the run stopped, as the start of a sentence; empty when that is not known or it was at the end. */
    private String stopped() throws IOException {
        OptionalDouble time = log.stoppedAt();
        if (time.isEmpty() && Files.isRegularFile(table)) {
            time = OutputTable.read(table).lastTime();
        }
        return time.isPresent() && isEarly(time.getAsDouble()) ? stoppedAt(time.getAsDouble()) + ", " : "";
    }

    private Optional<String> tableFault() throws IOException {
        if (!Files.isRegularFile(table)) {
            return Optional.of("the deck wrote no table " + job.table());
        }
        OutputTable ends = OutputTable.read(table);
        return ends.fault()
                .or(() -> Optional.of(ends.lastTime().getAsDouble())
                        .filter(this::isEarly)
                        .map(this::stoppedAt));
    }

    private Optional<String> measureFault() throws IOException {
        List<MeasureWindow> asked = MeasureWindow.ofDeck(job.deck());
        return log.measures().stream()
                .flatMap(made -> made.clipping(asked, job.stopTime()).stream())
                .findFirst();
    }

    private boolean isEarly(double time) {
        return time < job.stopTime() * (1 - ROUNDING);
    }

    private String stoppedAt(double time) {
        return "stopped at " + TimeText.of(time) + " of " + TimeText.of(job.stopTime()) + " ("
                + PlainNumber.percent(time / job.stopTime(), 1) + ")";
    }
}
