package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import lampproof.unit.PlainNumber;

/**
 * A straight axis with round ticks.
 *
 * @param low value at the start of the axis
 * @param high value at its end
 * @param step from tick to tick
 * @param from place of the start in the picture
 * @param to place of the end in the picture
 */
record Axis(double low, double high, double step, double from, double to) {

    /**
     * A tick.
     *
     * @param at place in the picture
     * @param label its value in the unit of the axis
     */
    record Tick(double at, String label) {}

    /** A tick that misses the end of the axis by less than this part of a step is drawn. */
    private static final double SLACK = 1e-3;

    /** An axis that ends exactly where its range does, with at most so many steps. */
    static Axis of(double low, double high, int steps, double from, double to) {
        double end = high > low ? high : low + Math.max(1e-12, Math.abs(low));
        return new Axis(low, end, roundStep((end - low) / steps), from, to);
    }

    /** Place of a value in the picture. */
    double at(double value) {
        return from + (to - from) * (value - low) / (high - low);
    }

    /** Places and labels of the ticks, in a unit of which one is {@code scale} of the axis. */
    List<Tick> ticks(double scale) {
        List<Tick> ticks = new ArrayList<>();
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step / scale) - 1e-9));
        for (long k = (long) Math.ceil(low / step - SLACK); k * step <= high + SLACK * step; k++) {
            String label = PlainNumber.fixed(k * step / scale, decimals).replace('-', '\u2212');
            ticks.add(new Tick(SvgPath.rounded(at(k * step)), label));
        }
        return ticks;
    }

    /**
     * An axis of the logarithm of a range, whose ticks are 1, 2 and 5 times a power of ten.
     *
     * @param low least value, above zero
     * @param high greatest value
     */
    static Axis logarithmic(double low, double high, double from, double to) {
        return new Axis(Math.log10(low), Math.log10(high), 1, from, to);
    }

    /** Places and labels, whole numbers, of the ticks of a logarithmic axis in a unit of which one is {@code scale} of it. */
    List<Tick> logarithmicTicks(double scale) {
        List<Tick> ticks = new ArrayList<>();
        for (int decade = (int) Math.floor(low); decade <= high; decade++) {
            for (int factor : new int[] {1, 2, 5}) {
                double value = decade + Math.log10(factor);
                if (value >= low && value <= high) {
                    String label = PlainNumber.fixed(factor * Math.pow(10, decade) / scale, 0);
                    ticks.add(new Tick(SvgPath.rounded(at(value)), label));
                }
            }
        }
        return ticks;
    }

    /** The smallest of 1, 2 and 5 times a power of ten that is not below a step. */
    private static double roundStep(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= step * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }
}
