package lampproof.measure;

import java.util.function.DoubleConsumer;

/** Exact means and extremes of a channel over successive bins of one width, from the start of a window. */
final class Bins {

    /** Receives one bin after the other. */
    interface Sink {
        /** Receives the mean, the smallest and the largest value of a bin. */
        void bin(double mean, double low, double high);
    }

    private static final double MOST = 2e7;
    private static final double SLACK = 1e-6;

    private final Channel channel;
    private final double start;
    private final double width;
    private final long count;
    private final Sink sink;
    private final boolean extremes;
    private long done;
    private double edge;
    private double area;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** Divides a channel into bins and computes their means. */
    Bins(Window window, Channel channel, double width, DoubleConsumer means) {
        this(window, channel, width, (mean, low, high) -> means.accept(mean), false);
    }

    /** Divides a channel into bins and computes their means and extremes. */
    Bins(Window window, Channel channel, double width, Sink sink) {
        this(window, channel, width, sink, true);
    }

    private Bins(Window window, Channel channel, double width, Sink sink, boolean extremes) {
        this.extremes = extremes;
        this.channel = channel;
        this.width = width;
        this.sink = sink;
        start = window.start();
        edge = start + width;
        double bins = window.length() / width + SLACK;
        count = bins < MOST ? (long) bins : 0;
    }

    /** Number of whole bins in the window; 0 as well when there would be too many. */
    long count() {
        return count;
    }

    void add(Pieces pieces) {
        int point = pieces.first();
        while (done < count && point < pieces.last()) {
            Pieces inside = pieces.before(edge, point);
            take(inside);
            point = inside.last();
            if (point < pieces.last()) {
                add(pieces.piece(point++));
            }
        }
    }

    private void take(Pieces inside) {
        area += inside.area(channel);
        if (extremes) {
            low = Math.min(low, inside.lowest(channel));
            high = Math.max(high, inside.highest(channel));
        }
    }

    /** Adds a piece in which one bin or several end. */
    private void add(Piece piece) {
        double from = piece.start();
        while (done < count && piece.end() >= edge) {
            part(piece, from, edge);
            from = Math.max(from, edge);
            close();
        }
        part(piece, from, piece.end());
    }

    /** Closes a last bin that only rounding kept open. */
    void end() {
        if (done == count - 1) {
            close();
        }
    }

    private void part(Piece piece, double from, double to) {
        double first = from > piece.start() ? piece.at(from, channel) : piece.from(channel);
        double last = piece.at(Math.max(from, to), channel);
        take(Math.max(0, to - from), first, last);
    }

    private void take(double width, double first, double last) {
        area += width * (first + last) / 2;
        low = Math.min(low, Math.min(first, last));
        high = Math.max(high, Math.max(first, last));
    }

    private void close() {
        sink.bin(area / width, low, high);
        area = 0;
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
        done++;
        edge = start + (done + 1) * width;
    }
}
