package lampproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.simulator.LogReader;
import lampproof.simulator.RunLog;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** The log of a simulator beside a table: the table of a failed run may look complete. */
final class SimulatorLogFile {

    /** File systems and copies keep times of a second [ms]. */
    private static final long SLACK = 1000;

    private SimulatorLogFile() {}

    /**
     * The reason to reject the run that wrote a table; empty if the log gives none.
     *
     * @param stopTime the simulated time at which its deck ends [s]
     * @throws UserFault no verdict, when there is a log that cannot be read
     */
    static Optional<String> failure(Path table, double stopTime) {
        Path log = beside(table);
        try {
            return Files.isRegularFile(log) && Files.isRegularFile(table) && ofSameRun(log, table)
                    ? failure(log, LogReader.read(log), stopTime)
                    : Optional.empty();
        } catch (IOException e) {
            throw UserFault.noVerdict(Finding.of("the log cannot be read", log.toString(), ""));
        }
    }

    /** The log has the name of the table without its endings: a packed one has two. */
    private static Path beside(Path table) {
        String name = table.getFileName().toString();
        return table.resolveSibling(name.replaceFirst("(?i)\\.[^.]*(\\.gz)?$", "") + ".log");
    }

    /** A log is finished last; one that is older than the table is left from an earlier run. */
    private static boolean ofSameRun(Path log, Path table) throws IOException {
        FileTime written = Files.getLastModifiedTime(table);
        return Files.getLastModifiedTime(log).toMillis() + SLACK >= written.toMillis();
    }

    private static Optional<String> failure(Path log, RunLog said, double stopTime) {
        String stopped = said.stoppedAt().stream()
                .mapToObj(time ->
                        ", stopped at " + Engineering.rounded(time, "s") + " of " + Engineering.rounded(stopTime, "s")
                                + " (" + PlainNumber.fixed(100 * time / stopTime, 1) + " %)")
                .findFirst()
                .orElse("");
        return said.reason().map(reason -> log.getFileName() + ": " + reason + stopped);
    }
}
