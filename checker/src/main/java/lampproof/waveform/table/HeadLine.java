package lampproof.waveform.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One of the first lines of a text file.
 *
 * @param number its number, counted from 1
 * @param offset place of its first byte
 * @param text the line without its end
 */
record HeadLine(int number, int offset, String text) {

    boolean blank() {
        return text.isBlank();
    }

    /** Whether it holds a control character, which no text has. */
    boolean controls() {
        return text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\t');
    }

    /** The text without a comment mark or a byte order mark in front. */
    String uncommented() {
        return text.replace("\ufeff", "").strip().replaceFirst("^(#|%|\\*|//)+\\s*", "");
    }

    boolean commented() {
        return !uncommented().equals(text.strip());
    }

    /** The lines of a head; a last one that is cut is left out. */
    static List<HeadLine> of(byte[] head, boolean whole) {
        Charset charset = charset(head);
        List<HeadLine> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < head.length; i++) {
            if (head[i] == '\n' || head[i] == '\r') {
                lines.add(new HeadLine(lines.size() + 1, start, new String(head, start, i - start, charset)));
                i += head[i] == '\r' && i + 1 < head.length && head[i + 1] == '\n' ? 1 : 0;
                start = i + 1;
            }
        }
        if (whole && start < head.length) {
            lines.add(new HeadLine(lines.size() + 1, start, new String(head, start, head.length - start, charset)));
        }
        return lines;
    }

    /** UTF-8 where the bytes are, else the Latin encoding that every byte fits. */
    private static Charset charset(byte[] head) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head, 0, lastCharacter(head)));
            return StandardCharsets.UTF_8;
        } catch (CharacterCodingException e) {
            return StandardCharsets.ISO_8859_1;
        }
    }

    /** Leaves out a character of several bytes that the end of the head may have cut. */
    private static int lastCharacter(byte[] head) {
        int end = head.length;
        while (end > 0 && head[end - 1] < 0) {
            end--;
        }
        return end;
    }
}
