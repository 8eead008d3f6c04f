package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;
import org.hipparchus.complex.Complex;

/**
 * How the switching ripple of the converter's input current divides while the bridge conducts, at its fundamental.
 *
 * <p>The bus capacitor stands across the filter capacitor and the way to the mains, both behind the resistance of the
 * bridge.
 *
 * @param bus share that the bus capacitor takes [-]
 * @param bridge share that flows through the bridge [-]; the two are not in phase and may add up to more than one
 */
record RippleSplit(double bus, double bridge) {

    /** All of it in the bus capacitor: the bridge blocks. */
    static final RippleSplit BLOCKED = new RippleSplit(1, 0);

    static RippleSplit of(Driver driver, double frequency) {
        double omega = 2 * Math.PI * frequency;
        Complex busCapacitor = new Complex(0, -1 / (omega * driver.busCapacitance()));
        Complex behindBridge = parallel(filterCapacitor(driver.filter(), omega), mains(driver, omega))
                .add(2 * driver.bridge().resistance());
        Complex whole = behindBridge.add(busCapacitor);
        return new RippleSplit(
                behindBridge.divide(whole).norm(), busCapacitor.divide(whole).norm());
    }

    private static Complex filterCapacitor(Filter filter, double omega) {
        return new Complex(0, -1 / (omega * filter.capacitance()));
    }

    private static Complex mains(Driver driver, double omega) {
        Filter filter = driver.filter();
        Complex choke = new Complex(filter.resistance(), omega * filter.inductance());
        return parallel(choke, new Complex(filter.damping())).add(driver.line().resistance() + filter.fuseResistance());
    }

    private static Complex parallel(Complex one, Complex other) {
        return one.multiply(other).divide(one.add(other));
    }
}
