package lampproof.waveform;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A form in which waveforms are written. */
interface Form {

    /** Recognises the form by the content. */
    static Form of(Content content, Hints hints, Faults faults) throws IOException {
        return RawForm.begins(content)
                ? RawForm.of(content, hints, faults)
                : new TableForm(TableRecognizer.recognize(content, hints, faults));
    }

    /** The form in words. */
    String words();

    List<Signal> signals();

    /** What turns the time column into seconds. */
    SampleClock clock();

    /** What a place in the file is called. */
    String place();

    /** What was noticed when the form was recognised. */
    List<Remark> remarks();

    /** Whether its numbers take time to read, so that it pays to keep them for a further pass. */
    default boolean slow() {
        return false;
    }

    /** The stretch of time when the ends of the file tell it; empty when all of it must be read. */
    default Optional<Span> spanByItsEnds(Content content) throws IOException {
        return Optional.empty();
    }

    /** Hands every row to {@code rows}. */
    void read(Content content, List<Signal> chosen, CheckedRows rows) throws IOException;
}
