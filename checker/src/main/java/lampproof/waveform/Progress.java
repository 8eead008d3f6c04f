package lampproof.waveform;

/** Hears how much of a file has been read. */
@FunctionalInterface
public interface Progress {

    /** Nobody listens. */
    Progress NONE = (read, size) -> {};

    /**
     * Tells the bytes of the file read so far.
     *
     * @param read bytes read, as they lie on the disk
     * @param size bytes in the file
     */
    void bytes(long read, long size);
}
