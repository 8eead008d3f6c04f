package lampproof.waveform;

/** Two blocks that are filled in turn, so that each remains valid until the next one is full. */
public final class BlockPair {

    private final Block one;
    private final Block other;
    private boolean turn;

    /**
     * Two empty blocks.
     *
     * @param signals number of signals in a row
     */
    public BlockPair(int signals) {
        one = new Block(signals);
        other = new Block(signals);
    }

    /** The block to be filled next, which still has its former rows. */
    public Block next() {
        turn = !turn;
        return turn ? one : other;
    }
}
