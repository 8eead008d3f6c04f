package lampproof.waveform;

import java.util.List;

/** Waveforms that can be read by name, any number of times: a file, or columns computed from one. */
public interface Waveforms {

    /** The stretch of time covered. */
    Span span();

    /**
     * Streams the rows of some signals.
     *
     * @param names names of the signals, in the requested order
     * @throws lampproof.fault.UserFault when there is no such signal, or a row cannot be read
     */
    ReadResult rows(List<String> names, BlockSink sink);
}
