package lampproof.measure;

/**
 * The largest value of a channel, without a given time after each edge of a gate: stress without ringing.
 *
 * <p>The caller gives the excluded time and reports it beside the figure; {@link Peak} counts everything.
 */
public final class PeakOutsideEdges extends PiecewiseMeasurement {

    /** The edges after which values are left out. */
    public enum After {
        /** Switching on. */
        RISING,
        /** Switching off. */
        FALLING,
        /** Both. */
        BOTH
    }

    private final Channel channel;
    private final double blanking;
    private final GateEdges edges;
    private double edge = Double.NaN;
    private double blankUntil = Double.NEGATIVE_INFINITY;
    private double largest = Double.NEGATIVE_INFINITY;

    /**
     * Measures a peak outside edges.
     *
     * @param blanking time left out after each edge [s]
     */
    public PeakOutsideEdges(Window window, Channel channel, Gate gate, After after, double blanking) {
        super(window);
        this.channel = channel;
        this.blanking = blanking;
        edges = new GateEdges(
                gate, t -> edge = after == After.FALLING ? edge : t, t -> edge = after == After.RISING ? edge : t);
    }

    @Override
    protected void add(Piece piece) {
        edge = Double.NaN;
        edges.add(piece);
        boolean edged = !Double.isNaN(edge);
        if (piece.width() > 0) {
            count(piece, Math.max(piece.start(), blankUntil), edged ? edge : piece.end());
        } else if (piece.start() > blankUntil) {
            largest = Math.max(largest, piece.from(channel));
            largest = edged ? largest : Math.max(largest, piece.to(channel));
        }
        if (edged) {
            blankUntil = edge + blanking;
            count(piece, Math.max(piece.start(), blankUntil), piece.end());
        }
    }

    @Override
    protected Measured measured() {
        return largest == Double.NEGATIVE_INFINITY
                ? Measured.absent("nothing is left outside the edges")
                : Measured.of(largest);
    }

    /** Counts the part of a piece between two times, if there is such a part. */
    private void count(Piece piece, double first, double last) {
        if (last > first) {
            largest = Math.max(largest, Math.max(piece.at(first, channel), piece.at(last, channel)));
        }
    }
}
