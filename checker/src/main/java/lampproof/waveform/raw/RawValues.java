package lampproof.waveform.raw;

import java.io.IOException;
import java.util.List;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.Signal;

/** The values of one plot in a raw file. */
interface RawValues {

    /** Passes every row on. */
    void read(List<Signal> chosen, CheckedRows rows) throws IOException;

    /** Moves to the head of the next plot. */
    void skip() throws IOException;
}
