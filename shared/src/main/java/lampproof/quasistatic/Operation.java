package lampproof.quasistatic;

import java.util.List;
import lampproof.design.Driver;

/**
 * The periodic steady state of a driver.
 *
 * @param driver the driver
 * @param setPoint on-time [s] or peak current [A] at which the string carries its mean current
 * @param points the half cycle, in the order of the angle
 * @param start the slow states at the line's zero crossing
 */
public record Operation(Driver driver, double setPoint, List<AnglePoint> points, HalfCycle.Ends start) {

    /** Copies the points. */
    public Operation {
        points = List.copyOf(points);
    }
}
