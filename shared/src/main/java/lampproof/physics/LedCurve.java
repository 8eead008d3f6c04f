package lampproof.physics;

import java.util.List;

/**
 * Voltage over current of an LED string: junctions with series resistance, through three points of its data sheet.
 *
 * <p>{@code V = A + B ln I + R I}, I in ampere; its slope is {@code dV/dI = B / I + R}.
 *
 * <p>Valid for currents much larger than the saturation current, near those of the points. B is {@code n k T / q} times
 * the junctions in series.
 *
 * <p>Source: W. Shockley, The theory of p-n junctions in semiconductors and p-n junction transistors, Bell System
 * Technical Journal 28(3), 1949, with series resistance.
 *
 * @param offset A [V]
 * @param logarithmic B: rise of the voltage for each factor e of current [V]
 * @param resistance R: series resistance [Ohm]
 */
public record LedCurve(double offset, double logarithmic, double resistance) {

    /**
     * The curve through three points.
     *
     * @param points points of rising current
     */
    public static LedCurve through(List<DiodeModel.Point> points) {
        DiodeModel.Point first = points.get(0);
        Rise low = Rise.between(first, points.get(1));
        Rise high = Rise.between(points.get(1), points.get(2));
        double scale = low.logarithm * high.current - high.logarithm * low.current;
        double logarithmic = (low.voltage * high.current - high.voltage * low.current) / scale;
        double resistance = (low.logarithm * high.voltage - high.logarithm * low.voltage) / scale;
        double offset = first.voltage() - logarithmic * Math.log(first.current()) - resistance * first.current();
        return new LedCurve(offset, logarithmic, resistance);
    }

    /** Whether it is a curve of diodes: neither of its two slopes is negative. */
    public boolean isDiode() {
        return logarithmic >= 0 && resistance >= 0;
    }

    /** Voltage [V] at a current [A]. */
    public double voltage(double current) {
        Require.positive("current [A]", current);
        return offset + logarithmic * Math.log(current) + resistance * current;
    }

    /** Slope of voltage over current [Ohm] at a current [A]. */
    public double dynamicResistance(double current) {
        Require.positive("current [A]", current);
        return logarithmic / current + resistance;
    }

    private record Rise(double voltage, double current, double logarithm) {

        static Rise between(DiodeModel.Point low, DiodeModel.Point high) {
            Require.positive("lower current [A]", low.current());
            Require.below("lower current [A]", low.current(), "higher current [A]", high.current());
            return new Rise(
                    high.voltage() - low.voltage(),
                    high.current() - low.current(),
                    Math.log(high.current() / low.current()));
        }
    }
}
