package lampproof.lint.netlist;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Splits a file into lines, as ngspice does: a line ends at a line feed, with or without a carriage return before it.
 *
 * <p>Any other carriage return stays in its line. ngspice drops it and reads what stands around it as one word, so a rule
 * refuses it.
 */
final class LineSplitter {

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
        boolean endsWithLineEnd = lines.length > 1 && lines[lines.length - 1].isEmpty();
        String[] told = endsWithLineEnd ? Arrays.copyOf(lines, lines.length - 1) : lines;
        return IntStream.range(0, told.length)
                .mapToObj(index -> new SourceLine(file, index + 1, told[index]))
                .toList();
    }
}
