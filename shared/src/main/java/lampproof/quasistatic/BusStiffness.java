package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * How far a charge that the converter takes moves the bus within a cycle while the bridge conducts.
 *
 * <p>Bus and filter capacitor are in parallel, and the path to the mains carries its share: nearly nothing far above the
 * corner of the filter, all of it far below. The share is that of a sine of the switching frequency, what is in phase with
 * the capacitor current alone. Where the bridge blocks the converter takes little, and the filter capacitor is counted all
 * the same.
 *
 * @param capacitance bus and filter capacitor [F]
 * @param mains impedance from the bridge to the mains
 */
record BusStiffness(double capacitance, MainsImpedance mains) {

    static BusStiffness of(Driver driver) {
        return new BusStiffness(driver.busCapacitance() + driver.filter().capacitance(), MainsImpedance.of(driver));
    }

    /** Voltage over charge at a switching period [s]; in [V/C]. */
    double elastance(double period) {
        double omega = 2 * Math.PI / period;
        double resistance = mains.resistance(omega);
        double reactance = mains.reactance(omega);
        double whole = reactance - 1 / (omega * capacitance);
        double share = (resistance * resistance + reactance * whole) / (resistance * resistance + whole * whole);
        return share / capacitance;
    }
}
