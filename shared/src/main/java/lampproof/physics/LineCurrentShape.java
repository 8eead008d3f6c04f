package lampproof.physics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.util.Pair;

/**
 * A line current given over one half cycle, with its mean, rms, harmonics and power factor.
 *
 * <p>{@code an = (2/pi) int i cos(n theta)}, {@code bn = (2/pi) int i sin(n theta)} over the conducting angle;
 * {@code In = sqrt((an^2 + bn^2) / 2)}; {@code PF = b1 / (sqrt 2 rms)}; {@code cos phi1 = b1 / sqrt(a1^2 + b1^2)}.
 *
 * <p>Valid for a sinusoidal line and a current that repeats with opposite sign in the other half cycle, so that it has
 * odd orders only, and that is smooth between the given edges. Orders up to 39 are exact to about ten digits
 * (Gauss-Legendre quadrature, 48 points on each quarter of the line cycle or less).
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.1-20.3.
 */
public final class LineCurrentShape {

    /**
     * Points and weights from -1 to 1; the factory of integrators would first set up decimal arithmetic for a second.
     */
    private static final Pair<double[], double[]> RULE = new LegendreRuleFactory().getRule(48);

    private final double[] sine = new double[HarmonicSpectrum.HIGHEST_ORDER + 1];
    private final double[] cosine = new double[HarmonicSpectrum.HIGHEST_ORDER + 1];
    private double mean;
    private double meanSquare;

    private LineCurrentShape(DoubleUnaryOperator current, double[] edges) {
        for (int i = 1; i < edges.length; i++) {
            int panels = (int) Math.ceil((edges[i] - edges[i - 1]) / (Math.PI / 2) - 1e-9);
            double half = (edges[i] - edges[i - 1]) / (2 * panels);
            for (int panel = 0; panel < panels; panel++) {
                addPanel(current, edges[i - 1] + (2 * panel + 1) * half, half);
            }
        }
        Require.positive("mean square of the current [A2]", meanSquare);
    }

    /**
     * Shape of a current.
     *
     * @param current current [A] over the angle [rad]
     * @param edges angle at which the current begins, angles at which it has a corner or a step, and angle at which it
     *     stops, rising from 0 to pi [rad]
     * @return the shape
     */
    public static LineCurrentShape of(DoubleUnaryOperator current, double... edges) {
        Require.within("number of edges [-]", edges.length, 2, 1000);
        Require.within("start of conduction [rad]", edges[0], 0, Math.PI);
        for (int i = 1; i < edges.length; i++) {
            Require.below("edge [rad]", edges[i - 1], "the next edge [rad]", edges[i]);
        }
        Require.within("end of conduction [rad]", edges[edges.length - 1], 0, Math.PI);
        return new LineCurrentShape(current, edges);
    }

    /** Mean over the half cycle [A]. */
    public double mean() {
        return mean;
    }

    /** Rms current [A]. */
    public double rms() {
        return Math.sqrt(meanSquare);
    }

    /** Rms current of a harmonic order from 1 to 39; zero for even orders [A]. */
    public double harmonic(int order) {
        Require.within("harmonic order [-]", order, 1, HarmonicSpectrum.HIGHEST_ORDER);
        return Math.hypot(cosine[order], sine[order]) / Math.sqrt(2);
    }

    /** Current of an order over the fundamental [-]. */
    public double relative(int order) {
        return harmonic(order) / harmonic(1);
    }

    /** Rms currents of order 1 to 39. */
    public HarmonicSpectrum spectrum() {
        double[] fromSecond = new double[HarmonicSpectrum.HIGHEST_ORDER - 1];
        for (int order = 2; order <= HarmonicSpectrum.HIGHEST_ORDER; order++) {
            fromSecond[order - 2] = harmonic(order);
        }
        return HarmonicSpectrum.of(harmonic(1), fromSecond);
    }

    /** Active over apparent power [-]. */
    public double powerFactor() {
        return sine[1] / (Math.sqrt(2) * rms());
    }

    /** Cosine of the angle between line voltage and fundamental current [-]. */
    public double displacementFactor() {
        return sine[1] / Math.hypot(cosine[1], sine[1]);
    }

    /** Total harmonic distortion of all orders, over the fundamental [-]. */
    public double thd() {
        return Math.sqrt(Math.max(0, meanSquare / Math.pow(harmonic(1), 2) - 1));
    }

    private void addPanel(DoubleUnaryOperator current, double centre, double half) {
        double[] points = RULE.getFirst();
        double[] weights = RULE.getSecond();
        for (int i = 0; i < points.length; i++) {
            double angle = centre + half * points[i];
            double value = current.applyAsDouble(angle);
            double weighted = half * weights[i] * value / Math.PI;
            mean += weighted;
            meanSquare += weighted * value;
            addOrders(2 * weighted, angle);
        }
    }

    /** Adds one point to all odd orders; sin((n + 2) x) = 2 cos(2 x) sin(n x) - sin((n - 2) x), likewise the cosine. */
    private void addOrders(double weighted, double angle) {
        double factor = 2 * Math.cos(2 * angle);
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        double lowerSin = -sin;
        double lowerCos = cos;
        for (int order = 1; order <= HarmonicSpectrum.HIGHEST_ORDER; order += 2) {
            sine[order] += weighted * sin;
            cosine[order] += weighted * cos;
            double nextSin = factor * sin - lowerSin;
            double nextCos = factor * cos - lowerCos;
            lowerSin = sin;
            lowerCos = cos;
            sin = nextSin;
            cos = nextCos;
        }
    }
}
