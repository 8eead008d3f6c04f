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
     * Computes the sums of the values.
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
        double angle = 2 * Math.PI * frequency * step;
        double[] base = new double[2 * orders + 1];
        double[] projections = new double[base.length];
        base[0] = 1;
        for (int i = 0; i < values.length; i++) {
            fill(base, angle * i);
            for (int k = 0; k < base.length; k++) {
                projections[k] += base[k] * values[i];
            }
        }
        RealVector projection = new ArrayRealVector(projections);
        RealVector solution = new LUDecomposition(new Array2DRowRealMatrix(products(sums(angle))))
                .getSolver()
                .solve(projection);
        return variation == 0 ? 0 : solution.dotProduct(projection) / variation;
    }

    /** The sums of twice as many functions over all places: geometric series. */
    private double[] sums(double angle) {
        double[] sums = new double[4 * orders + 1];
        sums[0] = values.length;
        for (int k = 1; k < sums.length; k += 2) {
            int order = (k + 1) / 2;
            double half = order * angle / 2;
            double size = Math.sin(values.length * half) / Math.sin(half);
            sums[k] = size * Math.cos((values.length - 1) * half);
            sums[k + 1] = size * Math.sin((values.length - 1) * half);
        }
        return sums;
    }

    /** The sum of the product of every two functions of the series, from the sums of twice as many functions. */
    private double[][] products(double[] sums) {
        int size = 2 * orders + 1;
        double[][] products = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                products[row][column] = product(row, column, sums);
            }
        }
        return products;
    }

    /** A product of two functions is half the sum of two others, of the sum and the difference of their orders. */
    private static double product(int one, int other, double[] sums) {
        int order = (one + 1) / 2;
        int otherOrder = (other + 1) / 2;
        if (sine(one) != sine(other)) {
            int difference = sine(one) ? order - otherOrder : otherOrder - order;
            return (sums[2 * (order + otherOrder)] + Integer.signum(difference) * sums[2 * Math.abs(difference)]) / 2;
        }
        double ofSum = cosines(order + otherOrder, sums);
        return (cosines(order - otherOrder, sums) + (sine(one) ? -ofSum : ofSum)) / 2;
    }

    private static boolean sine(int function) {
        return function > 0 && function % 2 == 0;
    }

    private static double cosines(int order, double[] sums) {
        return order == 0 ? sums[0] : sums[2 * Math.abs(order) - 1];
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
