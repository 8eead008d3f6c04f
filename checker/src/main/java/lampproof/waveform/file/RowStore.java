package lampproof.waveform.file;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import lampproof.waveform.Block;
import lampproof.waveform.BlockPair;
import lampproof.waveform.BlockSink;
import lampproof.waveform.Signal;

/**
 * Blocks of a long text table as bytes in a nameless temporary file: a later pass over the same signals reads them back
 * instead of the text, which is several times as fast. Memory does not grow with their number.
 */
final class RowStore implements BlockSink {

    private final FileChannel file;
    private final int signals;
    private final int capacity;
    private final ByteBuffer bytes;
    private final DoubleBuffer doubles;
    private long rows;
    private boolean broken;

    private RowStore(FileChannel file, int signals) {
        this.file = file;
        this.signals = signals;
        capacity = new Block(signals).capacity();
        bytes = ByteBuffer.allocateDirect(capacity * (signals + 1) * Double.BYTES)
                .order(ByteOrder.nativeOrder());
        doubles = bytes.asDoubleBuffer();
    }

    /**
     * A store for rows of some signals; empty if the disk is too full.
     *
     * @param most largest number of bytes
     */
    static Optional<RowStore> open(List<Signal> signals, long most) {
        try {
            Path path = Files.createTempFile("lampproof", ".rows");
            FileChannel file = FileChannel.open(
                    path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
            if (Files.getFileStore(path.getParent()).getUsableSpace() < 2 * most) {
                file.close();
                return Optional.empty();
            }
            return Optional.of(new RowStore(file, signals.size()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Stores a block; a full disk must not end a pass that does not need the copy. */
    @Override
    public void block(Block block) {
        rows += block.count();
        doubles.clear().put(block.times(), 0, block.count());
        for (int i = 0; i < signals; i++) {
            doubles.put(block.values(i), 0, block.count());
        }
        bytes.clear().limit(doubles.position() * Double.BYTES);
        try {
            while (!broken && bytes.hasRemaining()) {
                file.write(bytes);
            }
        } catch (IOException e) {
            broken = true;
        }
    }

    /** Whether all rows were stored. */
    boolean complete() {
        return !broken;
    }

    /** Passes every row on; every block but the last was full. */
    void replay(BlockSink sink) throws IOException {
        BlockPair blocks = new BlockPair(signals);
        file.position(0);
        long left = rows;
        while (left > 0) {
            Block block = blocks.next();
            block.setCount((int) Math.min(left, capacity));
            left -= block.count();
            read(block.count() * (signals + 1));
            doubles.clear().get(block.times(), 0, block.count());
            for (int i = 0; i < signals; i++) {
                doubles.get(block.values(i), 0, block.count());
            }
            sink.block(block);
        }
    }

    private void read(int numbers) throws IOException {
        bytes.clear().limit(numbers * Double.BYTES);
        while (bytes.hasRemaining()) {
            if (file.read(bytes) < 0) {
                throw new EOFException("the temporary copy of the rows ends early");
            }
        }
    }
}
