package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * How far the bus voltage is from its mean in each part of a switching cycle, since the line gives a steady current and the
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

    /** The swing at a line angle. */
    public static BusSwing of(Driver driver, AnglePoint point) {
        CellCycle cycle = point.cycle() == null ? CellCycle.NONE : point.cycle();
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        return of(cycle.on(), cycle.diode(), cycle.period(), BusStiffness.of(driver), stepUp);
    }

    /**
     * The swing that a cycle leaves.
     *
     * @param on inductor current while the switch conducts
     * @param diode inductor current while the diode conducts
     * @param period time from turn-on to turn-on [s]
     * @param throughDiode whether the diode current comes from the bus too
     */
    static BusSwing of(Ramp on, Ramp diode, double period, BusStiffness stiffness, boolean throughDiode) {
        double rest = period - on.time() - diode.time();
        double fallCharge = throughDiode ? diode.charge() : 0;
        double given = (on.charge() + fallCharge) / period;
        double onDroop = on.charge() - given * on.time();
        double meanOn = 0.5 * given * on.time() - takenEarly(on);
        double meanFall = 0.5 * given * diode.time() - (throughDiode ? takenEarly(diode) : 0) - onDroop;
        double meanIdle = -0.5 * given * rest;
        double mean = (meanOn * on.time() + meanFall * diode.time() + meanIdle * rest) / period;
        double volts = stiffness.elastance(period);
        return new BusSwing(
                -mean * volts,
                (meanOn - mean) * volts,
                onDroop * volts,
                (meanFall - mean) * volts,
                (fallCharge - given * diode.time()) * volts,
                (-given * rest - mean) * volts);
    }

    /** Mean over a ramp of the charge that it has taken until then [C]. */
    private static double takenEarly(Ramp ramp) {
        return ramp.time() * (2 * ramp.from() + ramp.to()) / 6;
    }
}
