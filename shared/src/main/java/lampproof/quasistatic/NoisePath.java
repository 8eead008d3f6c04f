package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.physics.ArtificialNetwork;
import org.hipparchus.complex.Complex;

/**
 * The way of the switching current to the mains, while the bridge conducts: bus capacitor, bridge, filter capacitor,
 * choke with its damping, fuse and line, and an artificial network in each of the two lines.
 *
 * @param driver the driver
 * @param network network in each line
 * @param bridgeCurrent current about which the bridge is swung [A]
 */
record NoisePath(Driver driver, ArtificialNetwork network, double bridgeCurrent) {

    /** Voltage across the network in one line over the current that the converter takes [Ohm], at a frequency [Hz]. */
    Complex transfer(double frequency) {
        double omega = 2 * Math.PI * frequency;
        Complex receiver = network.impedance(frequency);
        Complex line = Complex.ONE.divide(Impedance.toMains(driver, omega).add(receiver.multiply(2)));
        Complex bridged = line.add(new Complex(0, omega * driver.filter().capacitance()));
        double junctions = 2 * (driver.bridge().resistance() + driver.bridge().slope() / bridgeCurrent);
        Complex behindBus = Complex.ONE.divide(bridged).add(junctions);
        Complex share = behindBus
                .multiply(new Complex(0, omega * driver.busCapacitance()))
                .add(1);
        return line.divide(bridged).divide(share).multiply(receiver);
    }
}
