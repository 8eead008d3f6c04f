package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;

/**
 * How a sinusoidal ripple of the converter's input current divides while the bridge conducts.
 *
 * <p>The bus capacitor stands across the filter capacitor and the way to the mains, both behind the resistance of the
 * bridge: that of its parts and that of its junctions at the current they carry.
 *
 * @param bus square of the share that the bus capacitor takes [-]
 * @param bridge square of the share that flows through the bridge [-]; the two shares are not in phase
 */
record RippleSplit(double bus, double bridge) {

    /** All of it in the bus capacitor: the bridge blocks. */
    static final RippleSplit BLOCKED = new RippleSplit(1, 0);

    /**
     * The split at a frequency.
     *
     * @param bridgeCurrent current about which the bridge is swung [A]
     * @param omega angular frequency [rad/s]
     */
    static RippleSplit of(Driver driver, double bridgeCurrent, double omega) {
        Filter filter = driver.filter();
        double damping = filter.damping();
        double reactance = omega * filter.inductance();
        double loop = square(damping + filter.resistance()) + square(reactance);
        double choke = damping * (filter.resistance() * (damping + filter.resistance()) + square(reactance)) / loop;
        double mains = choke + driver.line().resistance() + filter.fuseResistance();
        double mainsReactance = square(damping) * reactance / loop;
        double mainsSquare = square(mains) + square(mainsReactance);
        double conductance = mains / mainsSquare;
        double susceptance = omega * filter.capacitance() - mainsReactance / mainsSquare;
        double admittance = square(conductance) + square(susceptance);
        double junctions = driver.bridge().slope() / bridgeCurrent;
        double behind = conductance / admittance + 2 * (driver.bridge().resistance() + junctions);
        double behindReactance = -susceptance / admittance;
        double capacitor = 1 / (omega * driver.busCapacitance());
        double whole = square(behind) + square(behindReactance - capacitor);
        return new RippleSplit((square(behind) + square(behindReactance)) / whole, square(capacitor) / whole);
    }

    private static double square(double x) {
        return x * x;
    }
}
