package lampproof.lint.netlist;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Splits a file into lines, as ngspice does: a line ends at a line feed, with or without a carriage return before it.
 *
 * <p>A last line that holds only Ctrl-Z (U+001A), with which old editors close a file, is left out; ngspice drops it too.
 *
 * <p>Any other carriage return stays in its line. ngspice drops it and reads what stands around it as one word, so a rule
 * refuses it.
 */
final class LineSplitter {

    private static final String CLOSING = "\u001a";

    private LineSplitter() {}

    /**
     * The lines of a file; at least one.
     *
     * @throws lampproof.fault.UserFault when the text is larger than any real deck
     */
    static List<SourceLine> split(String text, String file) {
        Limits.checkSize(text.length(), file);
        String[] lines = text.split("\r?\n", -1);
        Limits.checkLines(lines, file);
        String[] told = withoutLast(withoutLast(lines, ""), CLOSING);
        return IntStream.range(0, told.length)
                .mapToObj(index -> new SourceLine(file, index + 1, told[index]))
                .toList();
    }

    private static String[] withoutLast(String[] lines, String last) {
        boolean leftOut = lines.length > 1 && lines[lines.length - 1].equals(last);
        return leftOut ? Arrays.copyOf(lines, lines.length - 1) : lines;
    }
}
