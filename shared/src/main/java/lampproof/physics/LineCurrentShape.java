package lampproof.physics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A line current given over one half cycle, with its mean, rms, harmonics and power factor.
 *
 * <p>{@code an = (2/pi) int i cos(n theta)}, {@code bn = (2/pi) int i sin(n theta)} over the conducting angle;
 * {@code In = sqrt((an^2 + bn^2) / 2)}; {@code PF = b1 / (sqrt 2 rms)}; {@code cos phi1 = b1 / sqrt(a1^2 + b1^2)}.
 *
 * <p>Valid for a sinusoidal line and a current that repeats with opposite sign in the other half cycle, so that it has
 * odd orders only, and that is smooth within the conducting angle. Orders up to 39 are exact to about ten digits
 * (Gauss-Legendre quadrature, two panels of 48 points).
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.1-20.3.
 */
public final class LineCurrentShape {

    private static final int POINTS = 48;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(POINTS);

    private final double[] angles = new double[2 * POINTS];
    private final double[] weighted = new double[2 * POINTS];
    private final double meanSquare;

    private LineCurrentShape(DoubleUnaryOperator current, double start, double end) {
        double quarter = (end - start) / 4;
        double squares = 0;
        for (int i = 0; i < angles.length; i++) {
            double centre = start + (i < POINTS ? 1 : 3) * quarter;
            angles[i] = centre + quarter * RULE.getPoint(i % POINTS);
            double value = current.applyAsDouble(angles[i]);
            weighted[i] = quarter * RULE.getWeight(i % POINTS) * value;
            squares += weighted[i] * value;
        }
        meanSquare = squares / Math.PI;
        Require.positive("mean square of the current [A2]", meanSquare);
    }

    /**
     * Shape of a current that flows in one stretch of the half cycle.
     *
     * @param current current [A] over the angle [rad]
     * @param start angle at which the current begins [rad]
     * @param end angle at which the current stops [rad]
     * @return the shape
     */
    public static LineCurrentShape of(DoubleUnaryOperator current, double start, double end) {
        Require.within("start of conduction [rad]", start, 0, Math.PI);
        Require.below("start of conduction [rad]", start, "end of conduction [rad]", end);
        Require.within("end of conduction [rad]", end, start, Math.PI);
        return new LineCurrentShape(current, start, end);
    }

    /** Mean over the half cycle [A]. */
    public double mean() {
        double sum = 0;
        for (double value : weighted) {
            sum += value;
        }
        return sum / Math.PI;
    }

    /** Rms current [A]. */
    public double rms() {
        return Math.sqrt(meanSquare);
    }

    /** Rms current of a harmonic order; zero for even orders [A]. */
    public double harmonic(int order) {
        Require.within("harmonic order [-]", order, 1, 39);
        return order % 2 == 0 ? 0 : Math.hypot(cosine(order), sine(order)) / Math.sqrt(2);
    }

    /** Current of an order over the fundamental [-]. */
    public double relative(int order) {
        return harmonic(order) / harmonic(1);
    }

    /** Rms currents of order 1 to the given one, at most 39. */
    public HarmonicSpectrum spectrum(int highestOrder) {
        double[] fromSecond = new double[highestOrder - 1];
        for (int order = 2; order <= highestOrder; order++) {
            fromSecond[order - 2] = harmonic(order);
        }
        return HarmonicSpectrum.of(harmonic(1), fromSecond);
    }

    /** Active over apparent power [-]. */
    public double powerFactor() {
        return sine(1) / (Math.sqrt(2) * rms());
    }

    /** Cosine of the angle between line voltage and fundamental current [-]. */
    public double displacementFactor() {
        return sine(1) / Math.hypot(cosine(1), sine(1));
    }

    /** Total harmonic distortion of all orders, over the fundamental [-]. */
    public double thd() {
        return Math.sqrt(Math.max(0, meanSquare / Math.pow(harmonic(1), 2) - 1));
    }

    private double sine(int order) {
        double sum = 0;
        for (int i = 0; i < angles.length; i++) {
            sum += weighted[i] * Math.sin(order * angles[i]);
        }
        return 2 / Math.PI * sum;
    }

    private double cosine(int order) {
        double sum = 0;
        for (int i = 0; i < angles.length; i++) {
            sum += weighted[i] * Math.cos(order * angles[i]);
        }
        return 2 / Math.PI * sum;
    }
}
