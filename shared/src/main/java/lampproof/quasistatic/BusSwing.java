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
 * @param onDroop how far it falls meanwhile [V]
 * @param fall mean while the diode conducts [V]
 * @param fallDroop how far it falls meanwhile [V]
 * @param fallEnd when the diode has conducted [V]
 */
public record BusSwing(double turnOn, double on, double onDroop, double fall, double fallDroop, double fallEnd) {

    /** A bus that stands still. */
    static final BusSwing NONE = new BusSwing(0, 0, 0, 0, 0, 0);

    /** The swing at a line angle. */
    public static BusSwing of(Driver driver, AnglePoint point) {
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        return of(point.cycle(), BusStiffness.of(driver), stepUp);
    }

    /**
     * The swing that a cycle leaves.
     *
     * @param cycle the cycle; null where there is none
     * @param throughDiode whether the diode current comes from the bus too
     */
    static BusSwing of(CellCycle cycle, BusStiffness stiffness, boolean throughDiode) {
        if (cycle == null) {
            return NONE;
        }
        Ramp on = cycle.on();
        Ramp diode = cycle.diode();
        Ramp fall = throughDiode ? diode : new Ramp(0, 0, diode.time(), 0);
        double period = cycle.period();
        double rest = period - on.time() - diode.time();
        double given = (on.charge() + fall.charge()) / period;
        double onDroop = on.charge() - given * on.time();
        double meanOn = gathered(given, on);
        double meanFall = gathered(given, fall) - onDroop;
        double meanIdle = -0.5 * given * rest;
        double mean = (meanOn * on.time() + meanFall * diode.time() + meanIdle * rest) / period;
        double volts = stiffness.elastance(period);
        return new BusSwing(
                -mean * volts,
                (meanOn - mean) * volts,
                onDroop * volts,
                (meanFall - mean) * volts,
                (fall.charge() - given * diode.time()) * volts,
                (-given * rest - mean) * volts);
    }

    /** Mean of the charge that gathers while a ramp is taken out of a steady current [C]. */
    private static double gathered(double given, Ramp taken) {
        return taken.time() * (0.5 * given - (2 * taken.from() + taken.to()) / 6);
    }
}
