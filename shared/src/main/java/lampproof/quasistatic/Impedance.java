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

    /** The way from the bridge to the mains: choke with its damping, fuse and line. */
    static Complex toMains(Driver driver, double omega) {
        Filter filter = driver.filter();
        Complex choke = inductor(filter.inductance(), filter.resistance(), omega);
        return parallel(choke, new Complex(filter.damping())).add(driver.line().resistance() + filter.fuseResistance());
    }

    /** Two side by side. */
    static Complex parallel(Complex one, Complex other) {
        return one.multiply(other).divide(one.add(other));
    }
}
