package lampproof.simulator;

import java.nio.file.Path;

/**
 * One deck to simulate.
 *
 * @param deck the deck file; table and log go to its folder
 * @param name the name of the run, which names its log
 * @param table the file name of the table that the deck writes into the folder where the simulator works
 * @param stopTime the simulated time at which the deck ends [s]
 * @param timeLimit the longest wall time that the run may take [s]
 * @param sizeLimit the most that the run may write, table and messages together [bytes]
 */
public record SimulationJob(Path deck, String name, String table, double stopTime, double timeLimit, long sizeLimit) {

    private static final double DEFAULT_TIME_LIMIT = 600.0;
    private static final long DEFAULT_SIZE_LIMIT = 4L << 30;

    /**
     * Checks the names and limits.
     *
     * @throws IllegalArgumentException if a name is not a plain file name or a limit is not positive
     */
    public SimulationJob {
        deck = deck.toAbsolutePath().normalize();
        requirePlain(name);
        requirePlain(table);
        if (!(stopTime > 0) || !(timeLimit > 0) || sizeLimit <= 0) {
            throw new IllegalArgumentException("stop time and limits of " + name + " must be positive");
        }
    }

    /** A deck NAME.cir that writes NAME.csv, with 600 s and 4 GiB as limits. */
    public static SimulationJob of(Path deck, double stopTime) {
        String name = deck.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        return new SimulationJob(deck, name, name + ".csv", stopTime, DEFAULT_TIME_LIMIT, DEFAULT_SIZE_LIMIT);
    }

    /** The same job with another limit of wall time [s]. */
    public SimulationJob withTimeLimit(double limit) {
        return new SimulationJob(deck, name, table, stopTime, limit, sizeLimit);
    }

    /** The same job with another limit of written data [bytes]. */
    public SimulationJob withSizeLimit(long limit) {
        return new SimulationJob(deck, name, table, stopTime, timeLimit, limit);
    }

    /** The run folder: where the deck is and where table and log go. */
    public Path folder() {
        return deck.getParent();
    }

    /** Where the table of a completed run is. */
    public Path tableFile() {
        return folder().resolve(table);
    }

    /** Where the log of a run is, completed or failed. */
    public Path logFile() {
        return folder().resolve(name + ".log");
    }

    private static void requirePlain(String name) {
        if (name.isBlank() || name.startsWith(".") || name.matches(".*[/\\\\\\p{Cntrl}].*")) {
            throw new IllegalArgumentException("not a plain file name: '" + name + "'");
        }
    }
}
