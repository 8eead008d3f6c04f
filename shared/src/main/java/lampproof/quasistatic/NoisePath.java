package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.physics.ArtificialNetwork;
import org.hipparchus.complex.Complex;

/**
 * The path of one harmonic of the switching current to the mains, while the bridge conducts, and on to an artificial network
 * in each of the two lines.
 *
 * @param omega angular frequency [rad/s]
 * @param receiver impedance of the network in each line [Ohm]
 * @param bridgeCurrent current about which the bridge is swung [A]
 */
record NoisePath(double omega, Complex receiver, double bridgeCurrent) {

    /**
     * The path at a frequency.
     *
     * @param network network in each line
     * @param bridgeCurrent current about which the bridge is swung [A]
     * @param frequency frequency [Hz]
     */
    static NoisePath of(ArtificialNetwork network, double bridgeCurrent, double frequency) {
        return new NoisePath(2 * Math.PI * frequency, network.impedance(frequency), bridgeCurrent);
    }

    /** Voltage across the network in one line over the current that the converter takes, in magnitude [Ohm]. */
    double transfer(Driver driver) {
        MainsImpedance impedance = MainsImpedance.of(driver);
        double real = receiver.getReal();
        double imaginary = receiver.getImaginary();
        double mains = RippleSplit.of(
                        driver,
                        bridgeCurrent,
                        omega,
                        impedance.resistance(omega) + 2 * real,
                        impedance.reactance(omega) + 2 * imaginary)
                .mains();
        return Math.sqrt(mains * (real * real + imaginary * imaginary));
    }
}
