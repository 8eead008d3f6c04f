package lampproof.waveform;

import java.io.IOException;
import java.util.List;

/** The values of one plot in a raw file. */
interface RawValues {

    /** The values behind a head. */
    static RawValues of(RawHead head, RawWidth width, RawLines lines, Faults faults) {
        return head.binary() ? new RawBytes(head, width, lines, faults) : new RawText(head, lines, faults);
    }

    /** Hands every row on. */
    void read(List<Signal> chosen, CheckedRows rows) throws IOException;

    /** Moves to the head of the next plot. */
    void skip() throws IOException;
}
