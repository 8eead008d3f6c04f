package lampproof.instrument;

import java.util.List;
import lampproof.waveform.Block;
import lampproof.waveform.BlockPair;
import lampproof.waveform.BlockSink;

/** Converts the columns of a file to quantities: gain times column plus offset. */
final class ScaledBlocks implements BlockSink {

    private final List<Mapping> mappings;
    private final BlockPair blocks;
    private final BlockSink sink;

    ScaledBlocks(List<Mapping> mappings, BlockSink sink) {
        this.mappings = mappings;
        blocks = new BlockPair(mappings.size());
        this.sink = sink;
    }

    @Override
    public void block(Block block) {
        Block scaled = blocks.next();
        System.arraycopy(block.times(), 0, scaled.times(), 0, block.count());
        for (int i = 0; i < mappings.size(); i++) {
            scale(block.values(i), scaled.values(i), block.count(), mappings.get(i));
        }
        scaled.setCount(block.count());
        sink.block(scaled);
    }

    private static void scale(double[] from, double[] to, int count, Mapping mapping) {
        double gain = mapping.gain();
        double offset = mapping.offset();
        for (int i = 0; i < count; i++) {
            to[i] = gain * from[i] + offset;
        }
    }
}
