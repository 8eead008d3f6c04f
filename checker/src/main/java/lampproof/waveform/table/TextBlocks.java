package lampproof.waveform.table;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;

/** Cuts a stream of text into blocks of whole lines. */
final class TextBlocks {

    private static final int BLOCK = 1 << 20;

    private final InputStream in;
    private final Deque<byte[]> spare = new ArrayDeque<>();
    private byte[] rest = new byte[BLOCK + 1];
    private int length;
    private boolean ended;
    private boolean early;

    TextBlocks(InputStream in) {
        this.in = in;
    }

    /**
     * A block of whole lines.
     *
     * <p>The last byte is followed by a line end, whether or not the file has one there.
     */
    static final class Block {
        private final byte[] bytes;
        private final int length;

        Block(byte[] bytes, int length) {
            this.bytes = bytes;
            this.length = length;
            bytes[length] = '\n';
        }

        /** The text, from the first byte on. */
        byte[] bytes() {
            return bytes;
        }

        /** Number of bytes that belong to it. */
        int length() {
            return length;
        }

        /** Whether its last line has an end of its own. */
        boolean terminated() {
            return bytes[length - 1] == '\n' || bytes[length - 1] == '\r';
        }
    }

    /** Whether a packed file ended early. */
    boolean endedEarly() {
        return early;
    }

    /** The next block; null at the end, and if a line is too long. */
    Block next() throws IOException {
        while (length < BLOCK && !ended) {
            read();
        }
        int end = ended ? length : lineEnd();
        if (end == 0) {
            return null;
        }
        byte[] bytes = rest;
        rest = spare.isEmpty() ? new byte[BLOCK + 1] : spare.removeLast();
        length -= end;
        System.arraycopy(bytes, end, rest, 0, length);
        return new Block(bytes, end);
    }

    /** Recycles the memory of a block whose text is no longer needed. */
    void recycle(Block block) {
        spare.addLast(block.bytes);
    }

    /** Whether the whole text has been returned. */
    boolean done() {
        return ended && length == 0;
    }

    private void read() throws IOException {
        try {
            int got = in.read(rest, length, BLOCK - length);
            ended = got < 0;
            length += Math.max(0, got);
        } catch (EOFException e) {
            early = true;
            ended = true;
        }
    }

    /** The place after the last line end; a final carriage return may lack its line feed and does not count. */
    private int lineEnd() {
        int end = length;
        while (end > 0 && rest[end - 1] != '\n') {
            end--;
        }
        if (end == 0) {
            end = length - 1;
            while (end > 0 && rest[end - 1] != '\r') {
                end--;
            }
        }
        return end;
    }
}
