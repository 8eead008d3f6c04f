package lampproof.quasistatic;

import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.Filter;

/**
 * What the switching ripple of the bus drives back through filter and dimmer while the bridge conducts.
 *
 * @param bus swing of the bus voltage [V]
 * @param lamp swing of the current into the lamp [A]
 * @param triac swing of the current of the dimmer's switch [A]
 */
record DimmedRipple(double bus, double lamp, double triac) {

    static final DimmedRipple NONE = new DimmedRipple(0, 0, 0);

    /** The ripple of a driver whose converter moves a charge in and out of the bus [C] within a period [s]. */
    static DimmedRipple of(Driver driver, double charge, double period) {
        Filter filter = driver.filter();
        double bus = charge / (driver.busCapacitance() + filter.capacitance());
        double reactance = 2 * Math.PI * filter.inductance() / period;
        double lamp = bus * Math.hypot(1 / filter.damping(), 1 / reactance);
        return new DimmedRipple(bus, lamp, lamp * triacShare(driver.fittings().dimming(), period));
    }

    /** Part that does not flow through the noise capacitor: choke across its damping, against the capacitor. */
    private static double triacShare(Dimming dimming, double period) {
        double choke = 2 * Math.PI * dimming.inductance() / period;
        double capacitor = period / (2 * Math.PI * dimming.capacitance());
        double part = choke / (choke * choke + dimming.damping() * dimming.damping());
        double real = choke * dimming.damping() * part;
        double imaginary = dimming.damping() * dimming.damping() * part;
        return capacitor / Math.hypot(real, imaginary - capacitor);
    }
}
