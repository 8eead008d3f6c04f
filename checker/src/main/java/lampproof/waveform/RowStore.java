package lampproof.waveform;

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

/**
 * Rows of a long text table as bytes in a nameless temporary file: a later pass over the same signals reads them back
 * instead of the text, which is several times as fast. Memory does not grow with their number.
 */
final class RowStore implements RowSink {

    private static final int BUFFER = 1 << 19;

    private final FileChannel file;
    private final int width;
    private final double[] numbers;
    private final ByteBuffer bytes;
    private final DoubleBuffer doubles;
    private int held;
    private boolean broken;

    private RowStore(FileChannel file, int width) {
        this.file = file;
        this.width = width;
        numbers = new double[BUFFER / Double.BYTES / width * width];
        bytes = ByteBuffer.allocateDirect(numbers.length * Double.BYTES).order(ByteOrder.nativeOrder());
        doubles = bytes.asDoubleBuffer();
    }

    /**
     * A store for rows of some signals; empty when the disk has no room for it.
     *
     * @param most bytes that there may be
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
            return Optional.of(new RowStore(file, signals.size() + 1));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void row(double time, double[] values) {
        numbers[held] = time;
        System.arraycopy(values, 0, numbers, held + 1, width - 1);
        held += width;
        if (held == numbers.length) {
            write();
        }
    }

    /** Ends the rows; whether all of them are there. */
    boolean complete() {
        write();
        return !broken;
    }

    /** Hands every row on. */
    void replay(RowSink sink) throws IOException {
        double[] values = new double[width - 1];
        file.position(0);
        int count = read();
        while (count > 0) {
            for (int i = 0; i < count; i += width) {
                System.arraycopy(numbers, i + 1, values, 0, width - 1);
                sink.row(numbers[i], values);
            }
            count = read();
        }
    }

    /** A full disk must not end a pass that can do without. */
    private void write() {
        doubles.clear();
        doubles.put(numbers, 0, held);
        bytes.clear().limit(held * Double.BYTES);
        held = 0;
        try {
            while (!broken && bytes.hasRemaining()) {
                file.write(bytes);
            }
        } catch (IOException e) {
            broken = true;
        }
    }

    private int read() throws IOException {
        bytes.clear();
        while (bytes.hasRemaining() && file.read(bytes) >= 0) {
            // A file may give less than asked for.
        }
        int count = bytes.position() / Double.BYTES;
        doubles.clear();
        doubles.get(numbers, 0, count);
        return count;
    }
}
