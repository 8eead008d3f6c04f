package lampproof.waveform.raw;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Reads lines of text and blocks of bytes from one stream, for files that hold both. */
final class RawLines {

    private static final int BUFFER = 1 << 20;
    private static final int LONGEST_LINE = 1 << 16;

    private final InputStream in;
    private final Charset charset;
    private final byte[] buffer = new byte[BUFFER];
    private int next;
    private int limit;
    private long taken;
    private boolean early;

    RawLines(InputStream in, Charset wide) {
        this.in = in;
        charset = wide == null ? StandardCharsets.UTF_8 : wide;
    }

    /** Number of bytes consumed so far. */
    long taken() {
        return taken;
    }

    /** Whether a packed file ended early. */
    boolean endedEarly() {
        return early;
    }

    /** The next line without its end; null at the end. */
    String next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int b = read();
        if (b < 0) {
            return null;
        }
        while (b >= 0 && b != '\n' && line.size() < LONGEST_LINE) {
            line.write(b);
            b = read();
        }
        if (charset.equals(StandardCharsets.UTF_16LE) && b == '\n') {
            read();
        }
        return line.toString(charset).strip();
    }

    /** The next byte; -1 at the end. */
    int read() throws IOException {
        if (next == limit && !fill(1)) {
            return -1;
        }
        taken++;
        return buffer[next++] & 0xff;
    }

    /** The next character of a text, the lower of its bytes where it has two; -1 at the end. */
    int character() throws IOException {
        int b = read();
        if (charset.equals(StandardCharsets.UTF_16LE)) {
            read();
        }
        return b;
    }

    /** Buffers a number of bytes in one piece, if so many remain. */
    boolean ready(int count) throws IOException {
        return limit - next >= count || fill(count);
    }

    /** The buffer; the bytes begin at {@link #position}. */
    byte[] bytes() {
        return buffer;
    }

    int position() {
        return next;
    }

    int withinReach() {
        return limit - next;
    }

    void take(int count) {
        next += count;
        taken += count;
    }

    private boolean fill(int count) throws IOException {
        System.arraycopy(buffer, next, buffer, 0, limit - next);
        limit -= next;
        next = 0;
        while (limit < count) {
            int got = some();
            if (got < 0) {
                return false;
            }
            limit += got;
        }
        return true;
    }

    private int some() throws IOException {
        try {
            return in.read(buffer, limit, BUFFER - limit);
        } catch (EOFException e) {
            early = true;
            return -1;
        }
    }
}
