package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * How far the bus stands from its mean in each part of a switching cycle, since the line gives a steady current and the
 * converter takes a pulsed one.
 *
 * <p>The charge on the bus capacitor is followed through straight ramps of current; what the node takes is left out.
 *
 * @param turnOn when the switch closes [V]
 * @param on mean while the switch conducts [V]
 * @param fall mean while the diode conducts [V]
 * @param idle mean from then on to the next turn-on [V]
 */
public record BusSwing(double turnOn, double on, double fall, double idle) {

    /** A bus that stands still. */
    static final BusSwing NONE = new BusSwing(0, 0, 0, 0);

    /** The swing at a line angle. */
    public static BusSwing of(Driver driver, AnglePoint point) {
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        return point.cycle() == null ? NONE : of(point.cycle(), capacitance(driver), stepUp);
    }

    /** What holds the bus while the bridge conducts; where it does not, the converter takes little [F]. */
    static double capacitance(Driver driver) {
        return driver.busCapacitance() + driver.filter().capacitance();
    }

    /**
     * The swing that a cycle leaves.
     *
     * @param capacitance what holds the bus [F]
     * @param throughDiode whether the diode current comes from the bus too
     */
    static BusSwing of(CellCycle cycle, double capacitance, boolean throughDiode) {
        Ramp diode = cycle.diode();
        Ramp fall = throughDiode ? diode : new Ramp(0, 0, diode.time(), 0);
        double rest = cycle.rise().time() + cycle.ring().time();
        double period = cycle.period();
        double mean = (cycle.on().charge() + fall.charge()) / period;
        double afterOn = mean * cycle.onTime() - cycle.on().charge();
        double on = gathered(mean, cycle.on());
        double falling = afterOn + gathered(mean, fall);
        double idle = -0.5 * mean * rest;
        double middle = (on * cycle.onTime() + falling * diode.time() + idle * rest) / period;
        return new BusSwing(
                -middle / capacitance,
                (on - middle) / capacitance,
                (falling - middle) / capacitance,
                (idle - middle) / capacitance);
    }

    /** Mean of the charge that gathers while a ramp is taken out of a steady current [C]. */
    private static double gathered(double mean, Ramp taken) {
        return taken.time() * (0.5 * mean - (2 * taken.from() + taken.to()) / 6);
    }
}
