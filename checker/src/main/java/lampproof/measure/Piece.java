package lampproof.measure;

/**
 * The waveforms between two successive points, straight lines all of them.
 *
 * <p>One object is used for every piece of a pass: a measurement takes what it needs and keeps no reference. A piece
 * without width is a vertical edge.
 */
public final class Piece {

    private final Between between;
    private final double[] from;
    private final double[] to;
    private double start;
    private double end;

    Piece(int channels, Between between) {
        this.between = between;
        from = new double[channels];
        to = new double[channels];
    }

    /** Start [s]. */
    public double start() {
        return start;
    }

    /** End [s]. */
    public double end() {
        return end;
    }

    /** Width [s], never negative. */
    public double width() {
        return end - start;
    }

    /** The value at the start [unit of the channel]. */
    public double from(Channel channel) {
        return from[channel.index()];
    }

    /** The value at the end [unit of the channel]. */
    public double to(Channel channel) {
        return to[channel.index()];
    }

    /** The value [unit of the channel] at a time [s] within the piece; the value at the end for an edge. */
    public double at(double time, Channel channel) {
        return at(time, channel.index());
    }

    /** The time at which a channel passes a level that lies between its two ends [s]. */
    public double passes(Channel channel, double level) {
        double rise = to(channel) - from(channel);
        return rise == 0 ? end : start + width() * ((level - from(channel)) / rise);
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
        return width() * between.product(from(one), to(one), from(other), to(other));
    }

    Between between() {
        return between;
    }

    /** Sets the first point of a record. */
    void begin(double time, double[] values) {
        end = time;
        System.arraycopy(values, 0, to, 0, to.length);
    }

    /** Moves on to the next point. */
    void advance(double time, double[] values) {
        start = end;
        end = time;
        System.arraycopy(to, 0, from, 0, to.length);
        System.arraycopy(values, 0, to, 0, to.length);
    }

    /** Becomes the part of another piece that lies between two times. */
    void cut(Piece whole, double first, double last) {
        for (int i = 0; i < from.length; i++) {
            from[i] = first > whole.start ? whole.at(first, i) : whole.from[i];
            to[i] = last < whole.end ? whole.at(last, i) : whole.to[i];
        }
        start = Math.max(first, whole.start);
        end = Math.min(last, whole.end);
    }

    private double at(double time, int index) {
        double width = end - start;
        return width > 0 ? from[index] + (to[index] - from[index]) * ((time - start) / width) : to[index];
    }
}
