package lampproof.waveform;

/** Receives how much of a file has been read. */
@FunctionalInterface
public interface Progress {

    /** Ignores the progress. */
    Progress NONE = (read, size) -> {};

    /**
     * Receives the number of bytes read so far.
     *
     * @param read bytes read, as they lie on the disk
     * @param size bytes in the file
     */
    void bytes(long read, long size);
}
