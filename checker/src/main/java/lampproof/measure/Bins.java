package lampproof.measure;

import java.util.function.DoubleConsumer;

/** Exact means of a channel over successive bins of one width, from the start of a window; a rest is left out. */
final class Bins {

    private static final double MOST = 2e7;
    private static final double SLACK = 1e-6;

    private final Channel channel;
    private final double start;
    private final double width;
    private final long count;
    private final DoubleConsumer bin;
    private long done;
    private double area;

    Bins(Window window, Channel channel, double width, DoubleConsumer bin) {
        this.channel = channel;
        this.width = width;
        this.bin = bin;
        start = window.start();
        double bins = window.length() / width + SLACK;
        count = bins < MOST ? (long) bins : 0;
    }

    /** Number of whole bins in the window; 0 as well when there would be too many. */
    long count() {
        return count;
    }

    void add(Piece piece) {
        double from = piece.start();
        double edge = edge();
        while (done < count && piece.end() >= edge) {
            area += area(piece, from, edge);
            close();
            from = Math.max(from, edge);
            edge = edge();
        }
        area += area(piece, from, piece.end());
    }

    /** Closes a last bin that only rounding kept open. */
    void end() {
        if (done == count - 1) {
            close();
        }
    }

    private void close() {
        bin.accept(area / width);
        area = 0;
        done++;
    }

    private double edge() {
        return start + (done + 1) * width;
    }

    private double area(Piece piece, double from, double to) {
        return to > from ? (to - from) * (piece.at(from, channel) + piece.at(to, channel)) / 2 : 0;
    }
}
