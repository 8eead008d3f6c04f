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

    /** What turns the time column into seconds. */
    SampleClock clock();

    /** What a place in the file is called. */
    String place();

    /** What was noticed when the format was recognised. */
    List<Remark> remarks();

    /** Whether its numbers take time to read, so that it pays to keep them for a further pass. */
    default boolean slow() {
        return false;
    }

    /** The stretch of time when the ends of the file tell it; empty when all of it must be read. */
    default Optional<Span> spanFromEnds(DecodedFile content) throws IOException {
        return Optional.empty();
    }

    /** Hands every row to {@code rows}. */
    void read(DecodedFile content, List<Signal> chosen, CheckedRows rows) throws IOException;
}
