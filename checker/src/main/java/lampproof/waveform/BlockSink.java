package lampproof.waveform;

/** Receives the rows of waveforms in blocks, in the order of time. */
@FunctionalInterface
public interface BlockSink {

    /** Receives the next rows; the block does not change until the next call. */
    void block(Block block);
}
