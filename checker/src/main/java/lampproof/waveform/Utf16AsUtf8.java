package lampproof.waveform;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Text in two-byte characters, converted to UTF-8. */
final class Utf16AsUtf8 extends InputStream {

    private static final int CHARS = 1 << 14;

    private final Reader reader;
    private final char[] chars = new char[CHARS + 1];
    private byte[] bytes = new byte[0];
    private int next;

    Utf16AsUtf8(InputStream in, Charset encoding) {
        reader = new InputStreamReader(in, encoding);
    }

    @Override
    public int read() throws IOException {
        return ready() ? bytes[next++] & 0xff : -1;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!ready()) {
            return -1;
        }
        int count = Math.min(length, bytes.length - next);
        System.arraycopy(bytes, next, target, offset, count);
        next += count;
        return count;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }

    private boolean ready() throws IOException {
        if (next < bytes.length) {
            return true;
        }
        int count = reader.read(chars, 0, CHARS);
        if (count > 0 && Character.isHighSurrogate(chars[count - 1])) {
            int low = reader.read();
            chars[count] = (char) low;
            count += low < 0 ? 0 : 1;
        }
        bytes = count > 0 ? new String(chars, 0, count).getBytes(StandardCharsets.UTF_8) : new byte[0];
        next = 0;
        return count > 0;
    }
}
