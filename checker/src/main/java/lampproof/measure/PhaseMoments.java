package lampproof.measure;

import java.util.stream.IntStream;
import org.hipparchus.complex.Complex;

/**
 * Moments of a waveform over narrow parts of its period, from which its Fourier series follows.
 *
 * <p>Within a part of half width h around its middle, exp(-j n omega t) is a power series in n omega (t - middle); of
 * the waveform only its moments up to the sixth are then needed. With {@value #PARTS} parts and order 40 the neglected
 * rest is below 1e-12 of the waveform. A point costs a few sums instead of a few for each order.
 */
final class PhaseMoments {

    private static final int PARTS = 2048;
    private static final int MOMENTS = 7;

    /** Gauss-Legendre with four nodes, exact up to the seventh power (Abramowitz and Stegun 1964, table 25.4). */
    private static final double[] NODES = {
        -0.8611363115940526, -0.33998104358485626, 0.33998104358485626, 0.8611363115940526
    };

    private static final double[] WEIGHTS = {
        0.34785484513745385, 0.6521451548625461, 0.6521451548625461, 0.34785484513745385
    };

    /** Of two nodes, exact up to the third power; on a sliver of a part the rest is below 1e-12. */
    private static final double NODE_OF_A_SLIVER = 0.5773502691896257;

    private static final double SLIVER = 1.0 / 16;

    /** Over a whole turn; half a part of the fundamental lies between two of them. */
    private static final double[] COSINES = IntStream.range(0, 2 * PARTS)
            .mapToDouble(k -> Math.cos(k * Math.PI / PARTS))
            .toArray();

    private final double[] moments = new double[PARTS * MOMENTS];
    private final double pace;

    /**
     * Starts with nothing.
     *
     * @param frequency frequency of the fundamental [Hz]
     */
    PhaseMoments(double frequency) {
        pace = frequency * PARTS;
    }

    /** Whether an interval [s] is at most as wide as a part. */
    boolean narrow(double width) {
        return width * pace <= 1;
    }

    /** Adds a pulse of no width: a time [s] and its area. */
    void pulse(double time, double area) {
        double place = time * pace;
        double part = Math.floor(place);
        add(first(part), 2 * (place - part) - 1, area);
    }

    /**
     * Adds the straight lines from a point on that are short within one part, as most lines of a record with many
     * points are.
     *
     * @return place of the point where the last of them ends
     */
    int shortPieces(double[] times, double[] levels, int point, int last) {
        double part = Math.floor(times[point] * pace);
        double border = (part + 1) / pace;
        double widest = SLIVER / pace;
        int first = first(part);
        int at = point;
        double start = times[at];
        double from = levels[at];
        while (at < last) {
            double end = times[at + 1];
            double to = levels[at + 1];
            double width = end - start;
            if (end > border || width > widest) {
                break;
            }
            double middle = (start + end) * pace - 2 * part - 1;
            double reach = NODE_OF_A_SLIVER * width * pace;
            double rise = NODE_OF_A_SLIVER * (to - from);
            double left = width / 4 * (from + to - rise);
            double right = width / 4 * (from + to + rise);
            double x = middle - reach;
            double y = middle + reach;
            for (int k = first; k < first + MOMENTS; k++) {
                moments[k] += left + right;
                left *= x;
                right *= y;
            }
            start = end;
            from = to;
            at++;
        }
        return at;
    }

    /** Adds a straight line between two points at most one part apart. */
    void line(double start, double from, double end, double to) {
        double part = Math.floor(start * pace);
        double border = (part + 1) / pace;
        if (end > border && border > start) {
            double middle = from + (to - from) * ((border - start) / (end - start));
            within(part, start, from, border, middle);
            within(part + 1, border, middle, end, to);
        } else {
            within(part, start, from, end, to);
        }
    }

    /** The integral of the waveform times exp(-j n omega t) over all that was added. */
    Complex integral(int order) {
        double[] terms = terms(order * Math.PI / PARTS);
        double re = 0;
        double im = 0;
        for (int part = 0; part < PARTS; part++) {
            double even = 0;
            double odd = 0;
            int first = part * MOMENTS;
            for (int k = 0; k < MOMENTS; k += 2) {
                even += terms[k] * moments[first + k];
            }
            for (int k = 1; k < MOMENTS; k += 2) {
                odd += terms[k] * moments[first + k];
            }
            double cos = COSINES[((2 * part + 1) * order) % COSINES.length];
            double sin = COSINES[((2 * part + 1) * order + 3 * PARTS / 2) % COSINES.length];
            re += even * cos - odd * sin;
            im -= even * sin + odd * cos;
        }
        return new Complex(re, im);
    }

    /** The factors of the power series of exp(-j x) at a step; the odd ones without their -j. */
    private static double[] terms(double step) {
        double[] terms = new double[MOMENTS];
        terms[0] = 1;
        terms[1] = step;
        for (int k = 2; k < MOMENTS; k++) {
            terms[k] = -terms[k - 2] * step * step / (k * (k - 1));
        }
        return terms;
    }

    private void within(double part, double start, double from, double end, double to) {
        int first = first(part);
        double a = 2 * (start * pace - part) - 1;
        double b = 2 * (end * pace - part) - 1;
        for (int i = 0; i < NODES.length; i++) {
            double share = (1 + NODES[i]) / 2;
            double value = from + share * (to - from);
            add(first, a + share * (b - a), value * WEIGHTS[i] * (end - start) / 2);
        }
    }

    private static int first(double part) {
        return Math.floorMod((long) part, PARTS) * MOMENTS;
    }

    private void add(int first, double place, double area) {
        double moment = area;
        for (int k = 0; k < MOMENTS; k++) {
            moments[first + k] += moment;
            moment *= place;
        }
    }
}
