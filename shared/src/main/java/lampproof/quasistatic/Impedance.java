package lampproof.quasistatic;

import org.hipparchus.complex.Complex;

/** Complex impedances [Ohm]. */
public final class Impedance {

    private Impedance() {}

    /** A capacitance [F] at an angular frequency [rad/s]. */
    public static Complex capacitor(double capacitance, double omega) {
        return new Complex(0, -1 / (omega * capacitance));
    }

    /** An inductance [H] with its winding resistance [Ohm] at an angular frequency [rad/s]. */
    public static Complex inductor(double inductance, double resistance, double omega) {
        return new Complex(resistance, omega * inductance);
    }

    /** Two impedances in parallel. */
    public static Complex parallel(Complex one, Complex other) {
        return one.multiply(other).divide(one.add(other));
    }
}
