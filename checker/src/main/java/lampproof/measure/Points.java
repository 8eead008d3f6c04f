package lampproof.measure;

/** Successive points of every channel of a pass; each but the last begins a piece. */
final class Points {

    private final Interpolation interpolation;
    private final double[] times;
    private final double[][] levels;
    private int count;

    /** Points whose times and levels stand in arrays. */
    Points(Interpolation interpolation, double[] times, double[][] levels, int count) {
        this.interpolation = interpolation;
        this.times = times;
        this.levels = levels;
        this.count = count;
    }

    /**
     * Makes room.
     *
     * @param room number of points that fit in
     */
    Points(int channels, int room, Interpolation interpolation) {
        this(interpolation, new double[room], new double[channels][room], 0);
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

    /** Forgets every point. */
    void clear() {
        count = 0;
    }

    /** Copies a point of others behind the last one. */
    void add(Points others, int point) {
        times[count] = others.times[point];
        for (int i = 0; i < levels.length; i++) {
            levels[i][count] = others.levels[i][point];
        }
        count++;
    }

    /** The part of the piece that begins at a point which lies between two times [s]. */
    Pieces cut(int point, double start, double end) {
        Piece whole = new Pieces(this, point, point + 1).piece(point);
        Points part = new Points(levels.length, 2, interpolation);
        for (int i = 0; i < levels.length; i++) {
            part.levels[i][0] = start > whole.start() ? whole.at(start, levels[i]) : levels[i][point];
            part.levels[i][1] = end < whole.end() ? whole.at(end, levels[i]) : levels[i][point + 1];
        }
        part.times[0] = Math.max(start, whole.start());
        part.times[1] = Math.min(end, whole.end());
        return new Pieces(part, 0, 1);
    }
}
