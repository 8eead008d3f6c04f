package lampproof.waveform;

/** Takes the rows of waveforms in blocks, in the order of time. */
@FunctionalInterface
public interface BlockSink {

    /** Takes the next rows; the block is filled anew for those that follow. */
    void block(Block block);
}
