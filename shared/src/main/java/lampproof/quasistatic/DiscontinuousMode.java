package lampproof.quasistatic;

import java.util.List;
import java.util.stream.Stream;
import lampproof.design.Driver;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.PreferredSeries;
import lampproof.unit.PlainNumber;

/**
 * Whether the fixed-duty law stays in discontinuous mode, as it must.
 *
 * <p>Once the current no longer comes back to zero within the period, a fixed duty decides a voltage and no longer a
 * current: what flows then creeps for many cycles, and the string current follows every small change of the line.
 */
final class DiscontinuousMode {

    private static final int VALUES_TRIED = 24;

    private DiscontinuousMode() {}

    /**
     * Requires discontinuous mode at every line angle of a fixed-duty driver.
     *
     * @throws UserFault with the first angle at which it is left, the inductance, and the largest that works
     */
    static void require(Operation operation) {
        if (operation.leavesDiscontinuousMode()) {
            throw fault(operation);
        }
    }

    private static UserFault fault(Operation operation) {
        Driver driver = operation.driver();
        List<Double> angles = operation.points().stream()
                .filter(AnglePoint::continuous)
                .map(point -> Math.toDegrees(point.angle()))
                .toList();
        String found = millihenries(driver.inductor().inductance()) + ", with which the current flows on from "
                + PlainNumber.fixed(angles.get(0), 0) + " to "
                + PlainNumber.fixed(angles.get(angles.size() - 1), 0) + " deg of the line half cycle";
        return UserFault.badInput(new Finding(
                "fixed-duty control needs an inductor current that comes back to zero in every switching cycle",
                "inductor.inductance",
                found,
                allowed(driver),
                "lower inductor.inductance or switching.frequency, or take driver.control peak-current"));
    }

    private static String allowed(Driver driver) {
        double below = driver.inductor().inductance() * 0.99;
        return Stream.iterate(PreferredSeries.E12.down(below), value -> PreferredSeries.E12.down(value * 0.99))
                .limit(VALUES_TRIED)
                .filter(value -> !ControlRange.operation(with(driver, value)).leavesDiscontinuousMode())
                .findFirst()
                .map(value -> "at most " + millihenries(value))
                .orElse("");
    }

    private static String millihenries(double inductance) {
        return PlainNumber.significant(1e3 * inductance, 3) + " mH";
    }

    private static Driver with(Driver driver, double inductance) {
        return driver.with(driver.inductor().with(inductance));
    }
}
