package lampproof.simulator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a log once and sorts its messages into failures, remarks and others. */
public final class LogReader {

    private static final int MOST_LINES = 1_000_000;
    private static final int MOST_MESSAGES = 1000;
    private static final int MOST_DETAILS = 2;

    /** What the decks echo before their second run; the template of their probes says the same. */
    static final String TRIED_AGAIN = "lampproof: tried again with shorter steps";

    private static final Pattern REMARK = Pattern.compile(
            "warning|\\bnote:|ignor|unrecognized|unknown|redefin|already exists|compatib|unsupported|not supported",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern STOPPED = Pattern.compile("Timestep too small; time = (\\d+\\.?\\d*(?:e[-+]?\\d+)?),");

    private final List<ClassifiedFailure> failures = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<MeasureWindow> measures = new ArrayList<>();
    private OptionalDouble stoppedAt = OptionalDouble.empty();
    private long droppedRemarks;
    private int lines;
    private boolean triedAgain;

    /** A failure and the kind of its line. */
    private record ClassifiedFailure(FailingLine kind, RunLog.Failure failure) {}

    /** The message that the next line may continue. */
    private final List<String> message = new ArrayList<>();

    private Optional<FailingLine> failing = Optional.empty();

    private LogReader() {}

    /**
     * Reads a log file, whether lampproof or the simulator itself has written it.
     *
     * @throws IOException if it cannot be read
     */
    public static RunLog read(Path log) throws IOException {
        try (Lines lines = Lines.of(log)) {
            return read(lines);
        }
    }

    /** Reads the text of a log. */
    public static RunLog of(String text) {
        try (Lines lines = Lines.of(text)) {
            return read(lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RunLog read(Lines lines) throws IOException {
        LogReader reader = new LogReader();
        for (Optional<String> line = lines.next(); line.isPresent() && !reader.isFull(); line = lines.next()) {
            reader.add(line.get());
        }
        return reader.log();
    }

    private void add(String line) {
        lines++;
        triedAgain |= line.startsWith(TRIED_AGAIN);
        if (line.isBlank()) {
            conclude();
        } else {
            sort(line, FailingLine.of(line));
        }
    }

    /** Whether the log is longer than that of any real run; this counts as a failure. */
    private boolean isFull() {
        return lines >= MOST_LINES;
    }

    private RunLog log() {
        conclude();
        if (triedAgain) {
            dropFirstTry();
        }
        List<RunLog.Failure> reported = new ArrayList<>(
                failures.stream().map(ClassifiedFailure::failure).toList());
        if (isFull()) {
            reported.add(new RunLog.Failure("the log has " + MOST_LINES + " lines or more", false));
        }
        if (droppedRemarks > 0) {
            remarks.add("and " + droppedRemarks + " more");
        }
        return new RunLog(reported, remarks, measures, stoppedAt);
    }

    /** After one collapse of the step a lampproof deck runs again; with a second collapse all failures count. */
    private void dropFirstTry() {
        List<ClassifiedFailure> collapses =
                failures.stream().filter(each -> each.kind().isCollapse()).toList();
        if (collapses.size() == 1) {
            failures.removeAll(collapses);
            failures.stream()
                    .filter(each -> each.kind() == FailingLine.ABORTED)
                    .findFirst()
                    .ifPresent(failures::remove);
            stoppedAt = OptionalDouble.empty();
            remarks.add("the deck ran again with shorter steps: "
                    + collapses.get(0).failure().reason());
        }
    }

    private void sort(String line, Optional<FailingLine> next) {
        if (next.isPresent() || isRemark(line)) {
            conclude();
            message.add(line.strip());
            failing = next;
            noteStop(line);
        } else if (continues(line)) {
            message.add(line.strip());
        } else {
            conclude();
            MeasureWindow.ofLog(line).ifPresent(measures::add);
        }
    }

    private static boolean isRemark(String line) {
        return REMARK.matcher(line).find() && !line.startsWith("Circuit: ");
    }

    private void noteStop(String line) {
        Matcher stopped = STOPPED.matcher(line);
        if (stopped.find()) {
            stoppedAt = OptionalDouble.of(Double.parseDouble(stopped.group(1)));
        }
    }

    /** A failure continues on the lines below it, a remark only on indented lines. */
    private boolean continues(String line) {
        boolean open = !message.isEmpty() && message.size() <= MOST_DETAILS;
        return open && failing.map(FailingLine::hasDetails).orElse(line.startsWith("  "));
    }

    private void conclude() {
        if (!message.isEmpty()) {
            failing.ifPresentOrElse(this::addFailure, this::addRemark);
        }
        message.clear();
    }

    private void addFailure(FailingLine kind) {
        if (failures.size() < MOST_MESSAGES) {
            message.set(0, kind.meaning(message.get(0)));
            failures.add(new ClassifiedFailure(kind, new RunLog.Failure(sentence(), kind.isCause())));
        }
    }

    private void addRemark() {
        if (remarks.size() < MOST_MESSAGES) {
            remarks.add(sentence());
        } else {
            droppedRemarks++;
        }
    }

    private String sentence() {
        String first = message.get(0).replaceFirst("\\s*:$", "");
        String details = String.join(", ", message.subList(1, message.size()));
        return details.isEmpty() ? first : first + ": " + details;
    }
}
