package lampproof.waveform;

import java.util.List;

/** Waveforms that can be run through by name, any number of times: a file, or what is made of one. */
public interface Waveforms {

    /** The stretch of time covered. */
    Span span();

    /**
     * Streams the rows of some signals.
     *
     * @param names names of the signals, in the order wanted
     * @throws lampproof.fault.UserFault when there is no such signal, or a row cannot be read
     */
    ReadResult rows(List<String> names, BlockSink sink);
}
