package lampproof.documentation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A fenced block of a document.
 *
 * @param document the document
 * @param from index of its first line, after the fence
 * @param to index of its closing fence
 * @param language the word behind the opening fence, or nothing
 * @param note the text of the HTML comment on the line above the fence, or nothing
 */
record Block(Document document, int from, int to, String language, String note) {

    private static final String FENCE = "```";
    private static final Pattern COMMENT = Pattern.compile("<!-- (.*) -->");
    private static final Pattern NOT_RUN = Pattern.compile("not run: \\S.*");
    private static final Pattern EXIT_CODE = Pattern.compile("exit code (\\d): \\S.*");
    private static final Pattern OUTPUT = Pattern.compile("output of: (\\S.*?)(?:; lines (\\d+) to (\\d+))?");

    /**
     * What a sample shows.
     *
     * @param command the command whose output it is
     * @param from first line of the output that it shows, counted from 1
     * @param to last line that it shows
     */
    record Sample(String command, int from, int to) {

        /** The lines of an output that the sample shows. */
        List<String> of(List<String> output) {
            return output.subList(from - 1, Math.min(to, output.size()));
        }
    }

    /** Every fenced block of a document. */
    static List<Block> in(Document document) {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = document.lines();
        int from = -1;
        for (int index = 0; index < lines.size(); index++) {
            if (!lines.get(index).startsWith(FENCE)) {
                continue;
            }
            if (from < 0) {
                from = index + 1;
            } else {
                blocks.add(new Block(document, from, index, word(lines.get(from - 1)), above(lines, from - 1)));
                from = -1;
            }
        }
        return blocks;
    }

    private static String word(String fence) {
        return fence.substring(FENCE.length()).strip();
    }

    private static String above(List<String> lines, int fence) {
        Matcher comment = COMMENT.matcher(fence == 0 ? "" : lines.get(fence - 1).strip());
        return comment.matches() ? comment.group(1) : "";
    }

    List<String> lines() {
        return document.lines().subList(from, to);
    }

    /** Whether it shows commands. */
    boolean hasCommands() {
        return language.equals("sh");
    }

    /** Whether its commands are not to be run, for the reason that the note states. */
    boolean isSkipped() {
        return NOT_RUN.matcher(note).matches();
    }

    /** The exit code that its commands must have: 0 unless the note states another with its reason. */
    int exitCode() {
        Matcher stated = EXIT_CODE.matcher(note);
        return stated.matches() ? Integer.parseInt(stated.group(1)) : 0;
    }

    /** The command whose output it shows, if it shows one. */
    Optional<Sample> sample() {
        Matcher output = OUTPUT.matcher(note);
        if (!output.matches()) {
            return Optional.empty();
        }
        boolean all = output.group(2) == null;
        return Optional.of(new Sample(
                output.group(1),
                all ? 1 : Integer.parseInt(output.group(2)),
                all ? Integer.MAX_VALUE : Integer.parseInt(output.group(3))));
    }

    /** The document with other lines in this block. */
    Document with(List<String> other) {
        return document.with(from, to, other);
    }

    @Override
    public String toString() {
        return document.name() + ", line " + (from + 1);
    }
}
