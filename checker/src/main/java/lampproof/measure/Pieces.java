package lampproof.measure;

import java.util.function.Consumer;

/**
 * The waveforms from one point to a later one: pieces that follow each other, straight lines all of them.
 *
 * <p>A measurement reads what it needs and keeps no reference.
 */
public final class Pieces {

    private final Points points;
    private final int first;
    private final int last;

    /**
     * The pieces between two points.
     *
     * @param first place of the first point
     * @param last place of the last point; there are no pieces when it is the first
     */
    Pieces(Points points, int first, int last) {
        this.points = points;
        this.first = first;
        this.last = last;
    }

    /** Start of the first [s]. */
    public double start() {
        return points.times()[first];
    }

    /** End of the last [s]. */
    public double end() {
        return points.times()[last];
    }

    /** The value at the start [unit of the channel]. */
    public double from(Channel channel) {
        return levels(channel)[first];
    }

    /** The value at the end [unit of the channel]. */
    public double to(Channel channel) {
        return levels(channel)[last];
    }

    /** The largest value [unit of the channel]. */
    public double highest(Channel channel) {
        double[] level = levels(channel);
        double highest = level[first];
        for (int i = first + 1; i <= last; i++) {
            highest = level[i] > highest ? level[i] : highest;
        }
        return highest;
    }

    /** The smallest value [unit of the channel]. */
    public double lowest(Channel channel) {
        double[] level = levels(channel);
        double lowest = level[first];
        for (int i = first + 1; i <= last; i++) {
            lowest = level[i] < lowest ? level[i] : lowest;
        }
        return lowest;
    }

    /** The time integral of a channel [unit of the channel times s]. */
    public double area(Channel channel) {
        double[] times = points.times();
        double[] level = levels(channel);
        double time = times[first];
        double from = level[first];
        double sum = 0;
        for (int i = first + 1; i <= last; i++) {
            sum += (times[i] - time) * (from + level[i]);
            time = times[i];
            from = level[i];
        }
        return sum / 2;
    }

    /** The time integral of the product of two channels [product of their units times s]. */
    public double areaOfProduct(Channel one, Channel other) {
        return points.interpolation().areaOfProduct(points.times(), levels(one), levels(other), first, last);
    }

    /** Passes the pieces on one by one. */
    public void each(Consumer<Piece> sink) {
        Piece piece = piece(first);
        for (int i = first; i < last; i++) {
            piece.move(i);
            sink.accept(piece);
        }
    }

    /** The pieces from a point on that end before a time [s], which may be none. */
    Pieces before(double time, int point) {
        double[] times = points.times();
        int end = point;
        while (end < last && times[end + 1] < time) {
            end++;
        }
        return new Pieces(points, point, end);
    }

    /** The part of the piece that begins at a point which lies between two times [s]. */
    Pieces part(int point, double start, double end) {
        return cut(points, point, start, end);
    }

    /** The part of the piece that begins at one of some points which lies between two times [s]. */
    static Pieces cut(Points points, int point, double start, double end) {
        Piece whole = new Piece(points);
        whole.move(point);
        Points part = new Points(points.channels(), 2, points.interpolation());
        for (int i = 0; i < points.channels(); i++) {
            double[] levels = points.levels(i);
            part.levels(i)[0] = start > whole.start() ? whole.at(start, levels) : levels[point];
            part.levels(i)[1] = end < whole.end() ? whole.at(end, levels) : levels[point + 1];
        }
        part.times()[0] = Math.max(start, whole.start());
        part.times()[1] = Math.min(end, whole.end());
        return new Pieces(part, 0, 1);
    }

    /** The piece that begins at a point. */
    Piece piece(int point) {
        Piece piece = new Piece(points);
        piece.move(point);
        return piece;
    }

    Interpolation interpolation() {
        return points.interpolation();
    }

    /** Place of the first point among {@link #times} and {@link #levels}. */
    int first() {
        return first;
    }

    /** Place of the last point. */
    int last() {
        return last;
    }

    double[] times() {
        return points.times();
    }

    double[] levels(Channel channel) {
        return points.levels(channel.index());
    }
}
