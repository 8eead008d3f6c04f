package lampproof.quasistatic;

import java.util.List;

/**
 * Switching ripple of the string current in the periodic steady state, exactly: the string and its capacitor are a
 * first-order filter of time constant {@code tau = Rd C} for the current of the converter, whose straight pieces it answers
 * with {@code s = a + b t - b tau + K exp(-t / tau)}.
 *
 * <p>Without a capacitor the string takes the current as it is; with a large one it takes the mean.
 *
 * @param above greatest string current less its mean [A]
 * @param below mean string current less its least [A]
 * @param meanSquare mean square of what swings about the mean [A^2]
 */
record StringRipple(double above, double below, double meanSquare) {

    static final StringRipple NONE = new StringRipple(0, 0, 0);

    /** From this time constant over the period on, pieces and exponentials cancel all but the last digits [-]. */
    private static final double SLOW = 1e5;

    /** A straight piece of the current that the converter gives. */
    record Piece(double from, double to, double time) {

        private double charge() {
            return 0.5 * (from + to) * time;
        }
    }

    /** Greatest less least string current [A]. */
    double swing() {
        return above + below;
    }

    /**
     * The ripple of a current in pieces, one period long.
     *
     * @param timeConstant Rd C [s]
     */
    static StringRipple of(List<Piece> pieces, double timeConstant) {
        double period = pieces.stream().mapToDouble(Piece::time).sum();
        if (!(period > 0) || timeConstant > SLOW * period) {
            return NONE;
        }
        List<Piece> lasting = pieces.stream().filter(piece -> piece.time() > 0).toList();
        double mean = lasting.stream().mapToDouble(Piece::charge).sum() / period;
        Filter filter = new Filter(timeConstant);
        double start = filter.start(lasting, period);
        filter.run(lasting, start);
        return new StringRipple(
                filter.greatest - mean, mean - filter.least, Math.max(0, filter.square / period - mean * mean));
    }

    /** The filter, with what it has met so far. */
    private static final class Filter {

        private final double tau;
        private double greatest = Double.NEGATIVE_INFINITY;
        private double least = Double.POSITIVE_INFINITY;
        private double square;

        Filter(double timeConstant) {
            this.tau = timeConstant;
        }

        /** The string current with which a period ends as it began: what is left of a start decays in a period. */
        private double start(List<Piece> pieces, double period) {
            double end = 0;
            for (Piece piece : pieces) {
                end = next(piece, end);
            }
            return tau == 0 ? end : end / -Math.expm1(-period / tau);
        }

        private void run(List<Piece> pieces, double start) {
            double current = start;
            for (Piece piece : pieces) {
                meet(piece, current);
                current = next(piece, current);
            }
        }

        private double next(Piece piece, double start) {
            return tau == 0 ? piece.to() : at(piece, start, piece.time());
        }

        private double at(Piece piece, double start, double time) {
            double slope = slope(piece);
            return piece.from() + slope * (time - tau) + transientOf(piece, start) * Math.exp(-time / tau);
        }

        private static double slope(Piece piece) {
            return (piece.to() - piece.from()) / piece.time();
        }

        /** K: how far the string current is from the straight line at the start of a piece [A]. */
        private double transientOf(Piece piece, double start) {
            return start - piece.from() + slope(piece) * tau;
        }

        private void meet(Piece piece, double start) {
            double end = next(piece, start);
            meet(start);
            meet(end);
            if (tau == 0) {
                meet(piece.from());
                square += (piece.from() * piece.from() + piece.from() * piece.to() + piece.to() * piece.to())
                        / 3
                        * piece.time();
                return;
            }
            double turn = turn(piece, start);
            if (turn > 0 && turn < piece.time()) {
                meet(at(piece, start, turn));
            }
            square += square(piece, start);
        }

        private void meet(double current) {
            greatest = Math.max(greatest, current);
            least = Math.min(least, current);
        }

        /** When the string current stops rising or falling: its slope b - K / tau exp(-t / tau) is zero [s]. */
        private double turn(Piece piece, double start) {
            double slope = slope(piece);
            double ratio = transientOf(piece, start) / (slope * tau);
            return ratio > 0 ? tau * Math.log(ratio) : -1;
        }

        /** Integral of the squared string current over a piece, of p + b t + K exp(-t / tau) [A^2 s]. */
        private double square(Piece piece, double start) {
            double time = piece.time();
            double slope = slope(piece);
            double first = piece.from() - slope * tau;
            double k = transientOf(piece, start);
            double decayed = Math.exp(-time / tau);
            double fallen = -Math.expm1(-time / tau);
            double line = first * first * time + first * slope * time * time + slope * slope * time * time * time / 3;
            double cross = 2 * k * tau * (first * fallen + slope * (tau * fallen - time * decayed));
            return line + cross + k * k * 0.5 * tau * -Math.expm1(-2 * time / tau);
        }
    }
}
