package lampproof.measure;

/** Successive points of every channel of a pass; each but the last begins a piece. */
final class Points {

    private final Interpolation interpolation;
    private final double[] times;
    private final double[][] levels;
    private int count;

    /** Points with their times and levels in arrays. */
    Points(Interpolation interpolation, double[] times, double[][] levels, int count) {
        this.interpolation = interpolation;
        this.times = times;
        this.levels = levels;
        this.count = count;
    }

    /**
     * Allocates space.
     *
     * @param capacity largest number of points
     */
    Points(int channels, int capacity, Interpolation interpolation) {
        this(interpolation, new double[capacity], new double[channels][capacity], 0);
    }

    Interpolation interpolation() {
        return interpolation;
    }

    /** Number of points. */
    int count() {
        return count;
    }

    /** Number of channels. */
    int channels() {
        return levels.length;
    }

    /** The times [s]. */
    double[] times() {
        return times;
    }

    /** The values of a channel [unit of the channel]. */
    double[] levels(int channel) {
        return levels[channel];
    }

    /** Keeps the last point alone: the next piece begins there. */
    void keepLast() {
        if (count > 0) {
            times[0] = times[count - 1];
            for (double[] level : levels) {
                level[0] = level[count - 1];
            }
            count = 1;
        }
    }

    /** Removes every point. */
    void clear() {
        count = 0;
    }

    /** Appends a copy of a point of others. */
    void add(Points others, int point) {
        times[count] = others.times[point];
        for (int i = 0; i < levels.length; i++) {
            levels[i][count] = others.levels[i][point];
        }
        count++;
    }
}
