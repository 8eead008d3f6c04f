package lampproof.waveform.table;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.Span;

/** Reads the span of a large plain table from its first and last rows alone. */
final class TableSpanReader {

    private static final int TAIL = 1 << 16;

    private final DecodedFile content;
    private final TableLayout layout;

    TableSpanReader(DecodedFile content, TableLayout layout) {
        this.content = content;
        this.layout = layout;
    }

    /** The span; empty if the first or last rows are unusual and the whole table must be read. */
    Optional<Span> span() throws IOException {
        if (content.whole() || !content.plain() || !layout.scannable()) {
            return Optional.empty();
        }
        String tail = tail();
        if (!tail.endsWith("\n")) {
            return Optional.empty();
        }
        List<String> lines = tail.lines().filter(l -> !l.isBlank()).toList();
        int last = lines.size() - 1;
        String end = TableLayout.trailer(lines.get(last)) ? lines.get(last - 1) : lines.get(last);
        String head = new String(content.head(), StandardCharsets.ISO_8859_1);
        String start = head.substring(layout.firstByte()).lines().findFirst().orElse("");
        Span span = new Span(time(start), time(end));
        return span.length() > 0 ? Optional.of(span) : Optional.empty();
    }

    private String tail() throws IOException {
        try (SeekableByteChannel channel = Files.newByteChannel(content.path())) {
            channel.position(channel.size() - TAIL);
            ByteBuffer bytes = ByteBuffer.allocate(TAIL);
            int got = 0;
            while (got >= 0 && bytes.hasRemaining()) {
                got = channel.read(bytes);
            }
            return new String(bytes.array(), 0, bytes.position(), StandardCharsets.ISO_8859_1);
        }
    }

    /** The time of a row; not a number when the row is not regular. */
    private double time(String line) {
        List<String> cells = Cells.of(line, layout.delimiter());
        return cells.size() == layout.columns()
                ? layout.clock()
                        .time(layout.numbers().value(cells.get(layout.scale().column())))
                : Double.NaN;
    }
}
