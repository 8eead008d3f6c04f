package lampproof.waveform.raw;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.util.Optional;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.Span;

/** Reads the span of a binary raw file of one plot from its first and last rows alone. */
final class RawSpanReader {

    private final DecodedFile content;
    private final RawHead head;
    private final RawWidth width;
    private final long firstRow;

    /**
     * Prepares to read the rows after a head.
     *
     * @param headEnd place of the first value in the content
     */
    RawSpanReader(DecodedFile content, RawHead head, RawWidth width, long headEnd) {
        this.content = content;
        this.head = head;
        this.width = width;
        firstRow = headEnd + content.mark();
    }

    /** The span; empty if the file is unusual and must be read as a whole. */
    Optional<Span> span() throws IOException {
        if (content.packed() || !head.binary() || head.points().isEmpty() || width.scale() != Double.BYTES) {
            return Optional.empty();
        }
        long points = head.points().getAsLong();
        if (points < 2 || Files.size(content.path()) != firstRow + points * width.row(head)) {
            return Optional.empty();
        }
        try (SeekableByteChannel channel = Files.newByteChannel(content.path())) {
            Span span = new Span(time(channel, firstRow), time(channel, firstRow + (points - 1) * width.row(head)));
            return span.start() >= 0 && span.length() > RawColumns.SHORTEST_TIME && span.end() < RawColumns.LONGEST_TIME
                    ? Optional.of(span)
                    : Optional.empty();
        }
    }

    private double time(SeekableByteChannel channel, long place) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        channel.position(place);
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            // A channel may return less than requested.
        }
        double time = bytes.getDouble(0);
        return width.signMarks() ? Math.abs(time) : time;
    }
}
