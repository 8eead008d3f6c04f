package lampproof.quasistatic;

import static lampproof.quasistatic.Impedance.capacitor;
import static lampproof.quasistatic.Impedance.parallel;
import static lampproof.quasistatic.Impedance.toMains;

import lampproof.design.Driver;
import org.hipparchus.complex.Complex;

/**
 * How a sinusoidal ripple of the converter's input current divides while the bridge conducts.
 *
 * <p>The bus capacitor stands across the filter capacitor and the way to the mains, both behind the resistance of the
 * bridge: that of its parts and that of its junctions at the current they carry.
 *
 * @param bus square of the share that the bus capacitor takes [-]
 * @param bridge square of the share that flows through the bridge [-]; the two shares are not in phase
 */
record RippleSplit(double bus, double bridge) {

    /** All of it in the bus capacitor: the bridge blocks. */
    static final RippleSplit BLOCKED = new RippleSplit(1, 0);

    /**
     * The split at a frequency.
     *
     * @param bridgeCurrent current about which the bridge is swung [A]
     * @param omega angular frequency [rad/s]
     */
    static RippleSplit of(Driver driver, double bridgeCurrent, double omega) {
        Complex busCapacitor = capacitor(driver.busCapacitance(), omega);
        double bridge = 2 * (driver.bridge().resistance() + driver.bridge().slope() / bridgeCurrent);
        Complex behindBridge = parallel(capacitor(driver.filter().capacitance(), omega), toMains(driver, omega))
                .add(bridge);
        Complex whole = behindBridge.add(busCapacitor);
        return new RippleSplit(square(behindBridge) / square(whole), square(busCapacitor) / square(whole));
    }

    private static double square(Complex value) {
        return value.getReal() * value.getReal() + value.getImaginary() * value.getImaginary();
    }
}
