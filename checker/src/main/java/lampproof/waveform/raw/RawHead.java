package lampproof.waveform.raw;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lampproof.waveform.FileFaults;
import lampproof.waveform.ScaleName;

/**
 * The head of one plot in a SPICE raw file.
 *
 * <p>Lines of {@code Key: value}, then {@code Variables:} with one line of number, name and type for each vector, then
 * {@code Values:} before text or {@code Binary:} before bytes. A simulator that is stopped leaves the number of points
 * at zero or blank.
 *
 * @param plot name of the plot
 * @param flags words of the line of flags, in lower case
 * @param points number of points claimed; empty when it was never filled in
 * @param vectors names and types of the vectors, the scale first
 * @param binary whether bytes follow
 * @param offset whether the head has a line that only LTspice writes
 */
record RawHead(
        String plot, Set<String> flags, OptionalLong points, List<RawVector> vectors, boolean binary, boolean offset) {

    private static final int MOST_VECTORS = 1 << 16;
    private static final Pattern BEGINNING = Pattern.compile("(title|plotname|date):", Pattern.CASE_INSENSITIVE);
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /**
     * One vector.
     *
     * @param name its name
     * @param type its type, such as {@code voltage}
     */
    record RawVector(String name, String type) {}

    /** Reads a head; empty at the end of the file. */
    static Optional<RawHead> read(RawLines lines, FileFaults faults) throws IOException {
        String line = firstLine(lines);
        return line == null ? Optional.empty() : Optional.of(new Reader(lines, faults).from(line));
    }

    /**
     * Reads the head of a further plot after the values of one; empty at the end of the file.
     *
     * @throws lampproof.fault.UserFault when something else follows
     */
    static Optional<RawHead> behind(RawLines lines, FileFaults faults) throws IOException {
        String line = firstLine(lines);
        if (line != null && !begins(line)) {
            throw faults.whole(
                    "behind the points that the head promises stands more, and no other plot", "run it again");
        }
        return line == null ? Optional.empty() : Optional.of(new Reader(lines, faults).from(line));
    }

    /** Whether a text begins with a line of a head. */
    static boolean begins(String text) {
        return BEGINNING.matcher(text).lookingAt();
    }

    private static String firstLine(RawLines lines) throws IOException {
        String line = lines.next();
        while (line != null && line.isBlank()) {
            line = lines.next();
        }
        return line;
    }

    boolean complex() {
        return flags.contains("complex");
    }

    boolean transientRecord() {
        RawVector scale = vectors.get(0);
        return !complex() && (scale.type().equalsIgnoreCase("time") || ScaleName.time(scale.name()));
    }

    /** Parses the lines of a head. */
    private static final class Reader {
        private final RawLines lines;
        private final FileFaults faults;
        private String plot = "";
        private Set<String> flags = Set.of();
        private OptionalLong points = OptionalLong.empty();
        private int count;
        private boolean offset;
        private final List<RawVector> vectors = new ArrayList<>();

        Reader(RawLines lines, FileFaults faults) {
            this.lines = lines;
            this.faults = faults;
        }

        RawHead from(String first) throws IOException {
            String line = first;
            while (line != null) {
                int colon = (line + ":").indexOf(':');
                String key = line.substring(0, colon).strip().toLowerCase(Locale.ROOT);
                String value =
                        line.substring(Math.min(colon + 1, line.length())).strip();
                if (key.equals("binary") || key.equals("values")) {
                    return head(key.equals("binary"));
                }
                take(key, value);
                line = lines.next();
            }
            throw faults.whole("the head of the raw file ends early", "look into the simulator's log");
        }

        private RawHead head(boolean binary) {
            if (vectors.isEmpty()) {
                throw faults.whole("the head of the raw file names no variables", "");
            }
            return new RawHead(plot, flags, points, List.copyOf(vectors), binary, offset);
        }

        private void take(String key, String value) throws IOException {
            switch (key) {
                case "plotname" -> plot = value;
                case "flags" ->
                    flags = BLANKS.splitAsStream(value.toLowerCase(Locale.ROOT))
                            .collect(Collectors.toUnmodifiableSet());
                case "no. variables", "no.variables", "no. of variables" ->
                    count = (int) whole(key, value, MOST_VECTORS);
                case "no. points", "no.points", "no. of points" ->
                    points = value.isEmpty() || value.equals("0")
                            ? OptionalLong.empty()
                            : OptionalLong.of(whole(key, value, Long.MAX_VALUE));
                case "offset" -> offset = true;
                case "variables" -> variables(value);
                default -> {
                    // Title, date, command and options say nothing about the values.
                }
            }
        }

        private void variables(String first) throws IOException {
            if (!first.isEmpty()) {
                variable(first);
            }
            while (vectors.size() < count) {
                String line = lines.next();
                if (line == null) {
                    throw faults.whole("the head of the raw file ends early", "look into the simulator's log");
                }
                variable(line);
            }
        }

        private void variable(String line) {
            List<String> words = BLANKS.splitAsStream(line.strip()).toList();
            if (words.size() < 3 || !words.get(0).equals(String.valueOf(vectors.size()))) {
                throw faults.whole(
                        "the head of the raw file promises " + count + " variables, found '" + line.strip()
                                + "' in place of number " + vectors.size(),
                        "");
            }
            vectors.add(new RawVector(words.get(1), words.get(2)));
        }

        private long whole(String key, String value, long most) {
            try {
                long number = Long.parseLong(value);
                if (number >= 0 && number <= most) {
                    return number;
                }
            } catch (NumberFormatException e) {
                throw unreadable(key, value);
            }
            throw unreadable(key, value);
        }

        private lampproof.fault.UserFault unreadable(String key, String value) {
            return faults.whole("the head of the raw file has no number behind '" + key + "' but '" + value + "'", "");
        }
    }
}
