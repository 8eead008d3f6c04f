package lampproof.quasistatic.dimmed;

import static lampproof.quasistatic.Impedance.capacitor;
import static lampproof.quasistatic.Impedance.inductor;
import static lampproof.quasistatic.Impedance.parallel;

import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.quasistatic.BusRipple;
import org.hipparchus.complex.Complex;

/**
 * What the switching ripple of the bus drives back through filter and dimmer while the bridge conducts.
 *
 * @param bus swing of the bus voltage [V]
 * @param lamp swing of the current into the lamp [A]
 * @param lampSquare mean square of that current [A^2]
 * @param triac swing of the current of the dimmer's switch [A]
 */
record DimmedRipple(double bus, double lamp, double lampSquare, double triac) {

    static final DimmedRipple NONE = new DimmedRipple(0, 0, 0, 0);

    /** The ripple of a driver whose converter moves a charge in and out of the bus [C] within a period [s]. */
    static DimmedRipple of(Driver driver, double charge, double period) {
        double omega = 2 * Math.PI / period;
        double bus = charge / (driver.busCapacitance() + driver.filter().capacitance());
        double lamp = bus * driver.filter().admittance(omega);
        double triac = lamp * triacShare(driver.dimming(), omega);
        return new DimmedRipple(bus, lamp, BusRipple.meanSquare(driver.topology(), lamp), triac);
    }

    /** Part that does not flow through the noise capacitor: choke across its damping, against the capacitor. */
    private static double triacShare(Dimming dimming, double omega) {
        Complex choke = parallel(inductor(dimming.inductance(), 0, omega), new Complex(dimming.damping()));
        Complex capacitor = capacitor(dimming.capacitance(), omega);
        return capacitor.divide(choke.add(capacitor)).norm();
    }
}
