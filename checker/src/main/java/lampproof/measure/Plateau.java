package lampproof.measure;

/** The value between two bounds at which a channel stays longest, such as the blocking voltage between two spikes. */
public final class Plateau extends PieceByPiece {

    private static final int CLASSES = 512;

    private final Channel channel;
    private final double low;
    private final double step;
    private final double[] time = new double[CLASSES];
    private final double[] area = new double[CLASSES];

    /**
     * Looks for a plateau.
     *
     * @param low lower bound [unit of the channel]
     * @param high upper bound [unit of the channel]
     */
    public Plateau(Window window, Channel channel, double low, double high) {
        super(window);
        this.channel = channel;
        this.low = low;
        step = (high - low) / CLASSES;
    }

    @Override
    protected void add(Piece piece) {
        double bottom = Math.min(piece.from(channel), piece.to(channel));
        double top = Math.max(piece.from(channel), piece.to(channel));
        int first = Math.max(0, place(bottom));
        int last = Math.min(CLASSES - 1, place(top));
        for (int i = first; i <= last; i++) {
            double from = Math.max(bottom, low + i * step);
            double to = i == CLASSES - 1 ? Math.min(top, low + step * CLASSES) : Math.min(top, low + (i + 1) * step);
            double share = top > bottom ? Math.max(0, to - from) / (top - bottom) : 1;
            time[i] += piece.width() * share;
            area[i] += piece.width() * share * (top > bottom ? (from + to) / 2 : top);
        }
    }

    @Override
    protected Measured measured() {
        int longest = 0;
        for (int i = 1; i < CLASSES; i++) {
            longest = time[i] > time[longest] ? i : longest;
        }
        return Measured.ratio(area[longest], time[longest], "never between the bounds");
    }

    private int place(double value) {
        double place = Math.floor((value - low) / step);
        return value == low + step * CLASSES ? CLASSES - 1 : (int) Math.max(-1, Math.min(CLASSES, place));
    }
}
