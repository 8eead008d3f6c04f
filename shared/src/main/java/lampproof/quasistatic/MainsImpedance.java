package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;

/**
 * The impedance from the bridge to the mains: choke with its damping resistor across it, fuse and line. In real numbers, since
 * every switching cycle needs it.
 *
 * @param inductance filter inductor [H]
 * @param winding its resistance [Ohm]
 * @param damping resistor across both [Ohm]
 * @param series resistance of line and fuse [Ohm]
 */
record MainsImpedance(double inductance, double winding, double damping, double series) {

    static MainsImpedance of(Driver driver) {
        Filter filter = driver.filter();
        return new MainsImpedance(
                filter.inductance(),
                filter.resistance(),
                filter.damping(),
                driver.line().resistance() + filter.fuseResistance());
    }

    /** Real part of the impedance at an angular frequency [rad/s]; in [Ohm]. */
    double resistance(double omega) {
        double choke = omega * inductance;
        if (damping == 0) {
            return series;
        }
        return series + damping * (winding * (winding + damping) + choke * choke) / square(choke);
    }

    /** Imaginary part of the impedance at an angular frequency [rad/s]; in [Ohm]. */
    double reactance(double omega) {
        double choke = omega * inductance;
        return damping == 0 ? 0 : damping * damping * choke / square(choke);
    }

    /** Of the loop of choke and damping resistor [Ohm^2]. */
    private double square(double choke) {
        double loop = winding + damping;
        return loop * loop + choke * choke;
    }
}
