package lampproof.waveform;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** The bytes of a file after decompression and decoding of its text. */
public final class DecodedFile {

    private static final int PEEK = 4;
    private static final int HEAD = 1 << 16;
    private static final int BUFFER = 1 << 17;

    private final Path path;
    private final Progress progress;
    private final boolean packed;
    private final Charset wide;
    private final int mark;
    private final byte[] head;
    private final boolean whole;

    private DecodedFile(Path path, Progress progress, boolean packed) throws IOException {
        this.path = path;
        this.progress = progress;
        this.packed = packed;
        byte[] peek = first(unpacked(Progress.NONE), PEEK);
        wide = wideEncoding(peek);
        mark = markLength(peek);
        byte[] start = first(text(unmarked(unpacked(Progress.NONE))), HEAD + 1);
        whole = start.length <= HEAD;
        head = whole ? start : Arrays.copyOf(start, HEAD);
    }

    /**
     * Recognises compression and encoding by the first bytes of a file.
     *
     * @param progress receives the progress of each later pass over the content
     */
    public static DecodedFile of(Path path, Progress progress) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            byte[] magic = in.readNBytes(2);
            return new DecodedFile(path, progress, starts(magic, 0x1f, 0x8b));
        }
    }

    public Path path() {
        return path;
    }

    public boolean packed() {
        return packed;
    }

    /** The two-byte encoding of the text, when it has one. */
    public Optional<Charset> wide() {
        return Optional.ofNullable(wide);
    }

    /** The first bytes, unpacked, in UTF-8 or an encoding that shares its first half. */
    public byte[] head() {
        return head.clone();
    }

    /** Whether the head is the whole content. */
    public boolean whole() {
        return whole;
    }

    /** Whether positions in the file are positions in the text. */
    public boolean plain() {
        return !packed && wide == null;
    }

    public String name() {
        return String.valueOf(path.getFileName());
    }

    /** Length of the byte order mark [bytes]. */
    public int mark() {
        return mark;
    }

    /** The whole content after any byte order mark, its text in UTF-8 or an encoding that shares its first half. */
    public InputStream openText() throws IOException {
        return text(openBytes());
    }

    private InputStream text(InputStream bytes) {
        return wide == null ? bytes : new Utf16AsUtf8(new BufferedInputStream(bytes, BUFFER), wide);
    }

    /** The whole content after any byte order mark, byte for byte. */
    public InputStream openBytes() throws IOException {
        return unmarked(unpacked(progress));
    }

    private InputStream unmarked(InputStream bytes) throws IOException {
        try {
            bytes.skipNBytes(mark);
            return bytes;
        } catch (IOException e) {
            bytes.close();
            throw e;
        }
    }

    private InputStream unpacked(Progress listener) throws IOException {
        InputStream file = new Counted(Files.newInputStream(path), Files.size(path), listener);
        try {
            return packed ? new GZIPInputStream(file, BUFFER) : file;
        } catch (IOException e) {
            file.close();
            throw e;
        }
    }

    /** The first bytes; fewer when a packed file ends early. */
    private static byte[] first(InputStream content, int count) throws IOException {
        byte[] bytes = new byte[count];
        int length = 0;
        try (InputStream in = content) {
            int got;
            while (length < count && (got = in.read(bytes, length, count - length)) > 0) {
                length += got;
            }
        } catch (EOFException e) {
            return Arrays.copyOf(bytes, length);
        }
        return Arrays.copyOf(bytes, length);
    }

    private static Charset wideEncoding(byte[] b) {
        boolean four = b.length == PEEK;
        if (starts(b, 0xff, 0xfe) || (four && b[0] != 0 && b[1] == 0 && b[2] != 0 && b[3] == 0)) {
            return StandardCharsets.UTF_16LE;
        }
        boolean big = starts(b, 0xfe, 0xff) || (four && b[0] == 0 && b[1] != 0 && b[2] == 0 && b[3] != 0);
        return big ? StandardCharsets.UTF_16BE : null;
    }

    private static int markLength(byte[] b) {
        if (starts(b, 0xef, 0xbb, 0xbf)) {
            return 3;
        }
        return starts(b, 0xff, 0xfe) || starts(b, 0xfe, 0xff) ? 2 : 0;
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (bytes.length <= i || bytes[i] != (byte) mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Reports the progress while the bytes are read. */
    private static final class Counted extends FilterInputStream {
        private final long size;
        private final Progress progress;
        private long count;

        Counted(InputStream in, long size, Progress progress) {
            super(in);
            this.size = size;
            this.progress = progress;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int got = super.read(bytes, offset, length);
            if (got > 0) {
                count += got;
                progress.bytes(count, size);
            }
            return got;
        }
    }
}
