package lampproof.measure;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/** Fits an offset and the first orders of a Fourier series of a given frequency to evenly spaced values. */
final class SeriesFit {

    private final double[] values;
    private final double step;
    private final int orders;
    private final double variation;

    /**
     * Takes the values.
     *
     * @param step time between two of them [s]
     * @param orders number of orders in the series
     */
    SeriesFit(double[] values, double step, int orders) {
        double mean = Arrays.stream(values).average().orElse(0);
        this.values = Arrays.stream(values).map(v -> v - mean).toArray();
        this.step = step;
        this.orders = orders;
        variation = Arrays.stream(this.values).map(v -> v * v).sum();
    }

    /** The share of the variation that the best series of a frequency explains [-], 0 to 1. */
    double explained(double frequency) {
        int size = 2 * orders + 1;
        double[][] products = new double[size][size];
        double[] projections = new double[size];
        double[] base = new double[size];
        base[0] = 1;
        for (int i = 0; i < values.length; i++) {
            fill(base, 2 * Math.PI * frequency * step * i);
            for (int row = 0; row < size; row++) {
                projections[row] += base[row] * values[i];
                for (int column = 0; column < size; column++) {
                    products[row][column] += base[row] * base[column];
                }
            }
        }
        RealVector projection = new ArrayRealVector(projections);
        RealVector solution = new LUDecomposition(new Array2DRowRealMatrix(products))
                .getSolver()
                .solve(projection);
        return variation == 0 ? 0 : solution.dotProduct(projection) / variation;
    }

    /** Cosine and sine of each order, by turning from order to order. */
    private static void fill(double[] base, double angle) {
        double turnCos = Math.cos(angle);
        double turnSin = Math.sin(angle);
        double cos = 1;
        double sin = 0;
        for (int k = 1; k < base.length; k += 2) {
            double next = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = next;
            base[k] = cos;
            base[k + 1] = sin;
        }
    }
}
