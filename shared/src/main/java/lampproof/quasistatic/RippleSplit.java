package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * How a sinusoidal ripple of the converter's input current divides while the bridge conducts.
 *
 * <p>The bus capacitor is in parallel with the filter capacitor and the path to the mains, both behind the resistance of the
 * bridge: that of its parts and that of its junctions at the current they carry. In real arithmetic: the split is
 * computed some thousand times for one lamp.
 *
 * @param bus square of the share that the bus capacitor takes [-]
 * @param bridge square of the share that flows through the bridge [-]; the two shares are not in phase
 * @param mains square of the share that flows to the mains [-]
 */
record RippleSplit(double bus, double bridge, double mains) {

    /** All of it in the bus capacitor: the bridge blocks. */
    static final RippleSplit BLOCKED = new RippleSplit(1, 0, 0);

    /**
     * The split at a frequency.
     *
     * @param bridgeCurrent current about which the bridge is swung [A]
     * @param omega angular frequency [rad/s]
     */
    static RippleSplit of(Driver driver, double bridgeCurrent, double omega) {
        MainsImpedance mains = MainsImpedance.of(driver);
        return of(driver, bridgeCurrent, omega, mains.resistance(omega), mains.reactance(omega));
    }

    /** The same for a path to the mains of a given impedance, its real and imaginary part [Ohm]. */
    static RippleSplit of(Driver driver, double bridgeCurrent, double omega, double mainsReal, double mainsImaginary) {
        double resistance = 2 * (driver.bridge().resistance() + driver.bridge().slope() / bridgeCurrent);
        double filter = omega * driver.filter().capacitance();
        double bus = omega * driver.busCapacitance();
        // per unit of current on the path: bridge current, and the voltage across bridge and path
        double bridgeReal = 1 - filter * mainsImaginary;
        double bridgeImaginary = filter * mainsReal;
        double acrossReal = mainsReal + resistance * bridgeReal;
        double acrossImaginary = mainsImaginary + resistance * bridgeImaginary;
        double whole = square(bridgeReal - bus * acrossImaginary, bridgeImaginary + bus * acrossReal);
        return new RippleSplit(
                bus * bus * square(acrossReal, acrossImaginary) / whole,
                square(bridgeReal, bridgeImaginary) / whole,
                1 / whole);
    }

    private static double square(double real, double imaginary) {
        return real * real + imaginary * imaginary;
    }
}
