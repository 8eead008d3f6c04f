package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;
import org.hipparchus.complex.Complex;

/** Complex impedances [Ohm]. */
final class Impedance {

    private Impedance() {}

    /** A capacitance [F] at an angular frequency [rad/s]. */
    static Complex capacitor(double capacitance, double omega) {
        return new Complex(0, -1 / (omega * capacitance));
    }

    /** An inductance [H] with its winding resistance [Ohm] at an angular frequency [rad/s]. */
    static Complex inductor(double inductance, double resistance, double omega) {
        return new Complex(resistance, omega * inductance);
    }

    /** The way from the bridge to the mains: choke with its damping, fuse and line; in real arithmetic, for speed. */
    static Complex toMains(Driver driver, double omega) {
        Filter filter = driver.filter();
        double damping = filter.damping();
        double winding = filter.resistance();
        double loop = damping + winding;
        double reactance = omega * filter.inductance();
        double share = damping / (loop * loop + reactance * reactance);
        double series = driver.line().resistance() + filter.fuseResistance();
        return new Complex(series + share * (winding * loop + reactance * reactance), share * reactance * damping);
    }

    /** Two side by side. */
    static Complex parallel(Complex one, Complex other) {
        return one.multiply(other).divide(one.add(other));
    }
}
