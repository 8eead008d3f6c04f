package lampproof.spec;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** The text of a spec table: at most 1 MiB, in UTF-8 or UTF-16, with or without a byte order mark. */
final class SpecText {

    private static final int LIMIT = 1 << 20;

    private SpecText() {}

    static String of(Path file) {
        requireFile(file);
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LIMIT + 1);
            Workbook.reject(bytes, file.toString());
            checkSize(bytes.length, file.toString());
            return withoutMark(decoded(bytes, file.toString()));
        } catch (NoSuchFileException e) {
            throw fault("the file does not exist", file.toString(), "check the name of the spec");
        } catch (IOException e) {
            throw fault("the file cannot be read", file.toString(), "check that it is a readable text file");
        }
    }

    private static void requireFile(Path file) {
        if (Files.isDirectory(file)) {
            Path inside = file.resolve("spec.csv");
            String next = Files.isRegularFile(inside)
                    ? "name the spec in this run folder: " + inside
                    : "name a spec file in the folder, such as lamp.csv";
            throw fault("the spec is a folder, not a file", file.toString(), next);
        }
    }

    static String of(Reader reader, String file) {
        try {
            CharBuffer text = CharBuffer.allocate(LIMIT + 1);
            while (text.hasRemaining() && reader.read(text) >= 0) {}
            checkSize(text.position(), file);
            return withoutMark(text.flip().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void checkSize(int size, String file) {
        if (size > LIMIT) {
            throw fault("the file is larger than 1 MiB", file, "a spec is a short table; check the name");
        }
    }

    private static String decoded(byte[] bytes, String file) {
        Charset charset = charset(bytes);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            long line = 1 + text.chars().filter(letter -> letter == '\n').count();
            throw fault("invalid " + charset + " text", file + ", line " + line, "save the table as UTF-8 text");
        }
        return text;
    }

    /** A table begins with an ASCII character, so a zero byte among the first two means UTF-16 without a mark. */
    private static Charset charset(byte[] bytes) {
        if (bytes.length < 2) {
            return StandardCharsets.UTF_8;
        }
        int start = (bytes[0] & 0xff) << 8 | (bytes[1] & 0xff);
        if (start == 0xfffe || (start & 0xff) == 0) {
            return StandardCharsets.UTF_16LE;
        }
        return start == 0xfeff || start >> 8 == 0 ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    private static String withoutMark(String text) {
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private static UserFault fault(String what, String where, String next) {
        return UserFault.badInput(Finding.of(what, where, next));
    }
}
