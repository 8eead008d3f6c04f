package lampproof.physics;

import java.util.List;

/**
 * An LED string as the straight line of least squares through points of its data sheet.
 *
 * <p>{@code V = V0 + Rd I} with {@code Rd = S((I - Im)(V - Vm)) / S((I - Im)^2)}, {@code V0 = Vm - Rd Im}; Im and Vm are
 * the means. Through two points the line is exact.
 *
 * <p>Valid between the currents of the points, of which two at least differ.
 *
 * <p>Source: C. F. Gauss, Theoria motus corporum coelestium, 1809, sec. 179 (the method; the closed form of a line is
 * common practice, no source).
 *
 * @param knee V0 [V]
 * @param resistance dynamic resistance Rd [Ohm]
 */
public record KneeLine(double knee, double resistance) {

    /** The line of least squares through two or more points. */
    public static KneeLine through(List<DiodeModel.Point> points) {
        double current =
                points.stream().mapToDouble(DiodeModel.Point::current).average().orElseThrow();
        double voltage =
                points.stream().mapToDouble(DiodeModel.Point::voltage).average().orElseThrow();
        double product = 0;
        double square = 0;
        for (DiodeModel.Point point : points) {
            product += (point.current() - current) * (point.voltage() - voltage);
            square += (point.current() - current) * (point.current() - current);
        }
        Require.positive("spread of the currents [A2]", square);
        double resistance = product / square;
        return new KneeLine(voltage - resistance * current, resistance);
    }

    /** Voltage [V] at a current [A]. */
    public double voltage(double current) {
        return knee + resistance * current;
    }
}
