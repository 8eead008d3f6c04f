package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Rectifier;
import lampproof.physics.ArtificialNetwork;
import org.hipparchus.complex.Complex;

/**
 * The way of one harmonic of the switching current to the mains, while the bridge conducts: bus capacitor, bridge, filter
 * capacitor, choke with its damping, fuse and line, and an artificial network in each of the two lines.
 *
 * @param omega angular frequency [rad/s]
 * @param receiver impedance of the network in each line [Ohm]
 * @param bridge resistance of the two diodes about the current that they carry [Ohm]
 */
record NoisePath(double omega, Complex receiver, double bridge) {

    /**
     * The way at a frequency.
     *
     * @param network network in each line
     * @param bridge diodes of the bridge
     * @param bridgeCurrent current about which the bridge is swung [A]
     * @param frequency frequency [Hz]
     */
    static NoisePath of(ArtificialNetwork network, Rectifier bridge, double bridgeCurrent, double frequency) {
        double junctions = 2 * (bridge.resistance() + bridge.slope() / bridgeCurrent);
        return new NoisePath(2 * Math.PI * frequency, network.impedance(frequency), junctions);
    }

    /**
     * Voltage across the network in one line over the current that the converter takes, in magnitude [Ohm].
     *
     * <p>The ladder in real arithmetic: it is climbed some thousand times for one lamp.
     */
    double transfer(Driver driver) {
        Complex outside = Impedance.toMains(driver, omega);
        double resistance = outside.getReal() + 2 * receiver.getReal();
        double reactance = outside.getImaginary() + 2 * receiver.getImaginary();
        double filter = omega * driver.filter().capacitance();
        double bus = omega * driver.busCapacitance();
        double inPhase = 1 - filter * reactance;
        double across = filter * resistance;
        double shareInPhase = inPhase - bus * (reactance + bridge * across);
        double shareAcross = across + bus * (resistance + bridge * inPhase);
        return Math.sqrt(square(receiver.getReal(), receiver.getImaginary()) / square(shareInPhase, shareAcross));
    }

    private static double square(double real, double imaginary) {
        return real * real + imaginary * imaginary;
    }
}
