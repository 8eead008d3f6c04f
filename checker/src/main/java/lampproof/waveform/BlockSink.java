package lampproof.waveform;

/** Takes the rows of waveforms in blocks, in the order of time. */
@FunctionalInterface
public interface BlockSink {

    /** Takes the next rows; the block stays as it is until this is called again. */
    void block(Block block);
}
