package lampproof.simulator;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The lines of a log that make its run unusable, and what each means.
 *
 * <p>Recorded from runs of ngspice 39 that were made to fail in each of these ways, and from the messages of a shell about an ended program; with many of them the simulator ends with status 0 and a table that looks complete. Where several
 * constants fit a line, the first one counts.
 */
enum FailingLine {
    MEASURE("Error: measure\\s+(\\S+)\\s+(.*\\S)\\s*", "measure $1 failed, $2", Part.CAUSE_WITH_DETAILS),
    MEASURE_SKIPPED("No \\.measure possible.*", "no measure was made", Part.CAUSE),
    TIME_STEP_AT_NODE(
            "Timestep too small; time = .*trouble with node \"(.*)\".*", "timestep too small at node $1", Part.CAUSE),
    TIME_STEP("Timestep too small; time = [^:]*: *(.*?)\\.?\\s*$", "timestep too small, $1", Part.CAUSE),
    NO_TIME_STEP("Timestep too small.*", "timestep too small before the first time point", Part.CONSEQUENCE),
    SINGULAR_MATRIX("singular matrix:\\s*(.*\\S)\\s*", "singular matrix, $1", Part.CAUSE),
    ONE_MILLIOHM(
            "(?<!\\S)(\\S+): resistance to low, set to 1 mOhm.*",
            "resistor $1 has no value, the simulator used 1 mOhm",
            Part.CAUSE),
    INTERPOLATED(
            "Interpolated raw file data.*",
            "the option interp thins the points to the print grid and falsifies every rms value",
            Part.CAUSE),
    MISSING_MODEL("can't find model '(.*?)'.*", "model $1 is missing", Part.CAUSE_WITH_DETAILS),
    MISSING_VECTOR(
            "no such vector (\\S+).*",
            "the deck requests vector $1, which the circuit does not contain",
            Part.CAUSE_WITH_DETAILS),
    MISSING_FILE("Could not find (?:include|library) file (.*\\S)\\s*", "included file $1 is missing", Part.CAUSE),
    MISSING_PATH("^\\s*(\\S.*): No such file or directory.*", "file or folder for $1 is missing", Part.CAUSE),
    UNKNOWN_COMMAND(
            "(?<!\\S)(\\S+): no such command available.*", "the simulator does not know the command $1", Part.CAUSE),
    WRITE_ERROR(
            "(?:write error|no space left on device).*",
            "the simulator could not write its data, is the disk full?",
            Part.CAUSE),
    OUT_OF_MEMORY("(?:can't allocate|out of memory|memory exhausted).*", "the memory was too small", Part.CAUSE),
    KILLED(
            "^(?:.*\\d\\s+)?Killed(?:\\s{2,}.*|\\s*)$",
            "the simulator was killed from outside, was the memory too small?",
            Part.CAUSE),
    CRASHED("segmentation fault.*", "the simulator crashed", Part.CAUSE),
    ITERATION_LIMIT(
            "doAnalyses: .*iteration limit reached.*",
            "the simulator found no solution, iteration limit reached",
            Part.CONSEQUENCE),
    NO_OPERATING_POINT("(?:solution failed|op failed,).*", "the operating point was not found", Part.CONSEQUENCE),
    PARSING_STOPPED("Simulation interrupted due to error.*", "the deck was not understood", Part.CONSEQUENCE),
    FATAL("fatal error in.*", "the simulator gave up", Part.CONSEQUENCE),
    PAUSED("(?:simulation interrupted|pause requested).*", "the run was paused before its end", Part.CONSEQUENCE),
    ABORTED("\\baborted\\b.*", "the run was aborted", Part.CONSEQUENCE),
    NETLIST_LINE("Netlist line no\\..*", "simulator printed: $0", Part.CAUSE_WITH_DETAILS),
    ERROR("^.*\\berror\\b.*", "simulator printed: $0", Part.CAUSE_WITH_DETAILS);

    /** The role of a line among several failures: a cause is the better reason, whatever came first. */
    enum Part {
        CAUSE,
        /** A cause with details on the next lines. */
        CAUSE_WITH_DETAILS,
        CONSEQUENCE
    }

    /** The title of the deck, and rows of the node voltages: names in them may be any word. */
    private static final Pattern NO_MESSAGE = Pattern.compile(
            "Circuit: .*|[^\\s:]+\\s+-?(?:\\d|nan|inf)\\S*(?:\\s+-?(?:\\d|nan|inf)\\S*)?(?:\\s+\\*)?\\s*");

    private final Pattern pattern;
    private final String meaning;
    private final Part part;

    FailingLine(String pattern, String meaning, Part part) {
        this.pattern = Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
        this.meaning = meaning;
        this.part = part;
    }

    /** The constant of a line; empty for a harmless line. */
    static Optional<FailingLine> of(String line) {
        return NO_MESSAGE.matcher(line).matches()
                ? Optional.empty()
                : Stream.of(values()).filter(it -> it.matcher(line).find()).findFirst();
    }

    /** What the line means, in one clause. */
    String meaning(String line) {
        Matcher matcher = matcher(line);
        StringBuilder clause = new StringBuilder();
        if (matcher.find()) {
            matcher.appendReplacement(clause, meaning);
        }
        return clause.substring(matcher.start());
    }

    boolean isCause() {
        return part != Part.CONSEQUENCE;
    }

    /** Whether the step of a run has collapsed. */
    boolean isCollapse() {
        return this == TIME_STEP_AT_NODE || this == TIME_STEP;
    }

    boolean hasDetails() {
        return part == Part.CAUSE_WITH_DETAILS;
    }

    private Matcher matcher(String line) {
        return pattern.matcher(line);
    }
}
