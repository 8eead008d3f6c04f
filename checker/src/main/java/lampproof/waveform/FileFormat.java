package lampproof.waveform;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A format in which waveforms are written. */
public interface FileFormat {

    /** The format in words. */
    String words();

    /** The signals, in the order of the file. */
    List<Signal> signals();

    /** The conversion of the time column into seconds. */
    SampleClock clock();

    /** The word for a place in the file: line or row. */
    String place();

    /** What was noticed when the format was recognised. */
    List<Remark> remarks();

    /** Whether its numbers are slow to read, so that a copy for a further pass pays. */
    default boolean slow() {
        return false;
    }

    /** The span if the first and last rows suffice; empty if the whole file must be read. */
    default Optional<Span> spanFromEnds(DecodedFile content) throws IOException {
        return Optional.empty();
    }

    /** Passes every row to {@code rows}. */
    void read(DecodedFile content, List<Signal> chosen, CheckedRows rows) throws IOException;
}
