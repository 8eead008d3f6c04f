package lampproof.waveform;

import java.io.IOException;
import java.nio.file.Files;

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
     * Finds the widths.
     *
     * @param headEnd place of the first value in the file
     */
    static RawWidth of(RawHead head, Content content, long headEnd, Faults faults) throws IOException {
        if (head.complex()) {
            return COMPLEX;
        }
        if (head.flags().contains("fastaccess")) {
            throw faults.whole("is ordered by signal, not by time", "save it without fast access");
        }
        boolean ltspice = head.offset() || content.wide().isPresent();
        RawWidth usual = ltspice ? new RawWidth(8, head.flags().contains("double") ? 8 : 4, true) : DOUBLES;
        if (head.points().isEmpty() || content.packed()) {
            return usual;
        }
        long payload = Files.size(content.path()) - headEnd - content.mark();
        RawWidth mixed = new RawWidth(8, 4, ltspice);
        RawWidth singles = new RawWidth(4, 4, ltspice);
        for (RawWidth width : new RawWidth[] {usual, mixed, singles}) {
            if (payload == head.points().getAsLong() * width.row(head)) {
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
