package lampproof.waveform;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

/**
 * How many bytes a value has in a binary raw file; the file itself does not say.
 *
 * @param scale bytes of the scale
 * @param value bytes of any other vector
 * @param signMarks whether the sign of the time is a mark of LTspice's compression, not a sign
 */
record RawWidth(int scale, int value, boolean signMarks) {

    private static final RawWidth DOUBLES = new RawWidth(8, 8, false);
    private static final RawWidth COMPLEX = new RawWidth(16, 16, false);

    /**
     * Finds the widths by the length of the file, which a file cut short may have by chance, and by its first times.
     *
     * @param lines the file behind the head, of which nothing is taken
     */
    static RawWidth of(RawHead head, Content content, RawLines lines, Faults faults) throws IOException {
        if (head.complex()) {
            return COMPLEX;
        }
        if (head.flags().contains("fastaccess")) {
            throw faults.whole("is ordered by signal, not by time", "save it without fast access");
        }
        boolean ltspice = head.offset() || content.wide().isPresent();
        RawWidth usual = ltspice ? new RawWidth(8, head.flags().contains("double") ? 8 : 4, true) : DOUBLES;
        boolean sized = head.points().isPresent() && !content.packed();
        long payload = Files.size(content.path()) - lines.taken() - content.mark();
        boolean told = sized ? payload == head.points().getAsLong() * usual.row(head) : !head.transientRecord();
        if (!head.binary() || told) {
            return usual;
        }
        for (RawWidth width : List.of(usual, new RawWidth(8, 4, ltspice), new RawWidth(4, 4, ltspice))) {
            boolean fits = !sized || payload == head.points().getAsLong() * width.row(head);
            if (fits && new RawBytes(head, width, lines, faults).plausible()) {
                return width;
            }
        }
        return usual;
    }

    /** Bytes of a whole row. */
    int row(RawHead head) {
        return scale + value * (head.vectors().size() - 1);
    }

    String words() {
        return value + "-byte values";
    }
}
