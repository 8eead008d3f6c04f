package lampproof.waveform.raw;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.FileFaults;

/** Finds how many bytes a value has in a binary raw file. */
final class RawWidthSearch {

    private static final RawWidth DOUBLES = new RawWidth(8, 8, false);
    private static final RawWidth COMPLEX = new RawWidth(16, 16, false);

    private final DecodedFile content;
    private final RawLines lines;
    private final FileFaults faults;

    /**
     * Prepares to search.
     *
     * @param lines the file after the head; nothing is consumed
     */
    RawWidthSearch(DecodedFile content, RawLines lines, FileFaults faults) {
        this.content = content;
        this.lines = lines;
        this.faults = faults;
    }

    /**
     * The widths by the length of the file, which a file cut short may have by chance, and by its first times.
     *
     * @param head the head before the values
     */
    RawWidth width(RawHead head) throws IOException {
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
            if (fits && new RawColumns(head, width, lines, faults).plausible()) {
                return width;
            }
        }
        return usual;
    }
}
