package lampproof.measure;

/**
 * The waveforms between two successive points, straight lines all of them.
 *
 * <p>One object moves along the points of a pass: a measurement takes what it needs and keeps no reference. A piece
 * without width is a vertical edge.
 */
public final class Piece {

    private final Between between;
    private final double[] times;
    private final double[][] levels;
    private int first;

    /**
     * Makes room for successive points.
     *
     * @param points number of points; each but the last begins a piece
     */
    Piece(int channels, int points, Between between) {
        this(between, new double[points], new double[channels][points]);
    }

    private Piece(Between between, double[] times, double[][] levels) {
        this.between = between;
        this.times = times;
        this.levels = levels;
    }

    /** Another piece that moves along the same points by itself. */
    Piece view() {
        return new Piece(between, times, levels);
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
        return levels[channel.index()][first];
    }

    /** The value at the end [unit of the channel]. */
    public double to(Channel channel) {
        return levels[channel.index()][first + 1];
    }

    /** The value at a time [s] within the piece; the value at the end for an edge [unit of the channel]. */
    public double at(double time, Channel channel) {
        return at(time, levels[channel.index()]);
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
        return width() * between.product(from(one), to(one), from(other), to(other));
    }

    Between between() {
        return between;
    }

    /** Sets one of the points. */
    void set(int point, double time, double[] values) {
        times[point] = time;
        for (int i = 0; i < levels.length; i++) {
            levels[i][point] = values[i];
        }
    }

    /** Becomes the piece that begins at a point. */
    void move(int point) {
        first = point;
    }

    /** The time of a point [s]. */
    double time(int point) {
        return times[point];
    }

    /** Copies a point to the first place. */
    void bringForward(int point) {
        times[0] = times[point];
        for (double[] level : levels) {
            level[0] = level[point];
        }
    }

    /** Becomes the part of another piece that lies between two times. */
    void cut(Piece whole, double begin, double end) {
        for (int i = 0; i < levels.length; i++) {
            double[] level = whole.levels[i];
            levels[i][0] = begin > whole.start() ? whole.at(begin, level) : level[whole.first];
            levels[i][1] = end < whole.end() ? whole.at(end, level) : level[whole.first + 1];
        }
        times[0] = Math.max(begin, whole.start());
        times[1] = Math.min(end, whole.end());
    }

    private double at(double time, double[] level) {
        double width = width();
        double rise = level[first + 1] - level[first];
        return width > 0 ? level[first] + rise * ((time - times[first]) / width) : level[first + 1];
    }
}
