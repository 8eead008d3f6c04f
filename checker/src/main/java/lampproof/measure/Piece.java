package lampproof.measure;

/**
 * The waveforms between two successive points, straight lines all of them.
 *
 * <p>One object moves along the points of a pass: a measurement reads what it needs and keeps no reference. A piece
 * without width is a vertical edge.
 */
public final class Piece {

    private final Points points;
    private final double[] times;
    private int first;

    /** The piece that begins at the first of some points. */
    Piece(Points points) {
        this.points = points;
        times = points.times();
    }

    /** Start [s]. */
    public double start() {
        return times[first];
    }

    /** End [s]. */
    public double end() {
        return times[first + 1];
    }

    /** Width [s], never negative. */
    public double width() {
        return times[first + 1] - times[first];
    }

    /** The value at the start [unit of the channel]. */
    public double from(Channel channel) {
        return levels(channel)[first];
    }

    /** The value at the end [unit of the channel]. */
    public double to(Channel channel) {
        return levels(channel)[first + 1];
    }

    /** The value at a time [s] within the piece; the value at the end for an edge [unit of the channel]. */
    public double at(double time, Channel channel) {
        return at(time, levels(channel));
    }

    /** The time at which a channel passes a level that lies between its two ends [s]. */
    public double passes(Channel channel, double level) {
        double rise = to(channel) - from(channel);
        return rise == 0 ? end() : start() + width() * ((level - from(channel)) / rise);
    }

    /** How long a channel stays at or below a level [s]. */
    public double timeUpTo(double level, Channel channel) {
        double low = Math.min(from(channel), to(channel));
        double high = Math.max(from(channel), to(channel));
        if (high <= level) {
            return width();
        }
        return low >= level ? 0 : width() * ((level - low) / (high - low));
    }

    /** The time integral of a channel [unit of the channel times s]. */
    public double area(Channel channel) {
        return width() * (from(channel) + to(channel)) / 2;
    }

    /** The time integral of the product of two channels [product of their units times s]. */
    public double areaOfProduct(Channel one, Channel other) {
        return points.interpolation().areaOfProduct(times, levels(one), levels(other), first, first + 1);
    }

    /** Moves to the piece that begins at a point. */
    void move(int point) {
        first = point;
    }

    /** The value at a time within the piece, of which all values are given. */
    double at(double time, double[] level) {
        double width = width();
        double rise = level[first + 1] - level[first];
        return width > 0 ? level[first] + rise * ((time - times[first]) / width) : level[first + 1];
    }

    private double[] levels(Channel channel) {
        return points.levels(channel.index());
    }
}
