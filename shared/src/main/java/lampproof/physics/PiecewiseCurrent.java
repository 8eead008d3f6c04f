package lampproof.physics;

import java.util.List;

/**
 * A periodic current put together from segments, with its mean and rms.
 *
 * <p>{@code rms = sqrt(sum Dk uk)}, with {@code uk = (I1^2 + I1 I2 + I2^2) / 3} for a straight segment and
 * {@code Ipk^2 / 2} for a half sine; time not covered by a segment carries no current.
 *
 * <p>Valid for segments that together last no longer than one period.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, app. A, eq. (A.1)-(A.18).
 *
 * @param segments segments in any order
 */
public record PiecewiseCurrent(List<Segment> segments) {

    /** Checks that the segments fit into one period. */
    public PiecewiseCurrent {
        segments = List.copyOf(segments);
        // A sum of shares written as decimals may pass 1 by a few units in the last place.
        Require.within(
                "sum of shares [-]",
                segments.stream().mapToDouble(Segment::share).sum(),
                0,
                1 + 1e-12);
    }

    /** The current made of the given segments. */
    public static PiecewiseCurrent of(Segment... segments) {
        return new PiecewiseCurrent(List.of(segments));
    }

    /** Mean current [A]. */
    public double mean() {
        return segments.stream().mapToDouble(s -> s.share() * s.mean()).sum();
    }

    /** Rms current [A]. */
    public double rms() {
        return Math.sqrt(
                segments.stream().mapToDouble(s -> s.share() * s.meanSquare()).sum());
    }

    /**
     * One segment of the period.
     *
     * @param share share of the period [-]
     * @param mean mean current within the segment [A]
     * @param meanSquare mean of the squared current within the segment [A2]
     */
    public record Segment(double share, double mean, double meanSquare) {

        /** Checks the share. */
        public Segment {
            Require.within("share of the period [-]", share, 0, 1);
        }

        /** A constant current: the share of the period [-] and the current [A]. */
        public static Segment flat(double share, double current) {
            return new Segment(share, current, current * current);
        }

        /** A straight line: the share of the period [-], the current at its start and at its end [A]. */
        public static Segment ramp(double share, double start, double end) {
            return new Segment(share, (start + end) / 2, (start * start + start * end + end * end) / 3);
        }

        /** Half a sine: the share of the period [-] and the peak current [A]. */
        public static Segment halfSine(double share, double peak) {
            return new Segment(share, 2 / Math.PI * peak, peak * peak / 2);
        }
    }
}
