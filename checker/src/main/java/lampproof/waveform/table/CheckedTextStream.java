package lampproof.waveform.table;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Rejects control characters and endless rows, such as one with an open quote; detects whether the last line has an
 * end.
 */
final class CheckedTextStream extends FilterInputStream {

    private static final int LONGEST = 1 << 22;

    private int unbroken;
    private int lastByte = '\n';

    CheckedTextStream(InputStream in) {
        super(in);
    }

    /** A row has ended. */
    void cellsEnded() {
        unbroken = 0;
    }

    /** Whether the last byte read ended a line. */
    boolean lineEnded() {
        return lastByte == '\n' || lastByte == '\r';
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        int got = super.read(bytes, offset, length);
        for (int i = offset; i < offset + got; i++) {
            refuseControl(bytes[i]);
        }
        if (got > 0) {
            lastByte = bytes[offset + got - 1];
            unbroken += got;
        }
        if (unbroken > LONGEST) {
            throw new IOException("a row does not end within " + LONGEST + " characters; a quote may not be closed");
        }
        return got;
    }

    private static void refuseControl(byte b) throws IOException {
        if (b >= 0 && b < ' ' && b != '\t' && b != '\r' && b != '\n') {
            throw new IOException("a control character: not a text, or damaged");
        }
    }
}
