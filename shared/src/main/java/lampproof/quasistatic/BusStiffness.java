package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;

/**
 * How far a charge that the converter takes moves the bus within a cycle while the bridge conducts.
 *
 * <p>Bus and filter capacitor stand side by side, and the way to the mains gives its share: nearly nothing far above the
 * corner of the filter, all of it far below. The share is that of a sine of the switching frequency, what is in phase with
 * the capacitor current alone. Where the bridge blocks the converter takes little, and the filter capacitor is counted all
 * the same.
 *
 * @param capacitance bus and filter capacitor [F]
 * @param inductance filter inductor [H]
 * @param winding its resistance [Ohm]
 * @param damping resistor across both [Ohm]
 * @param series resistance of line and fuse [Ohm]
 */
record BusStiffness(double capacitance, double inductance, double winding, double damping, double series) {

    static BusStiffness of(Driver driver) {
        Filter filter = driver.filter();
        return new BusStiffness(
                driver.busCapacitance() + filter.capacitance(),
                filter.inductance(),
                filter.resistance(),
                filter.damping(),
                driver.line().resistance() + filter.fuseResistance());
    }

    /** Voltage over charge at a switching period [s]; in [V/C]. Written out in real numbers, since every cycle asks. */
    double elastance(double period) {
        double omega = 2 * Math.PI / period;
        double choke = omega * inductance;
        double loop = winding + damping;
        double square = loop * loop + choke * choke;
        double real = series + damping * (winding * loop + choke * choke) / square;
        double imaginary = damping * damping * choke / square;
        double whole = imaginary - 1 / (omega * capacitance);
        double share = (real * real + imaginary * whole) / (real * real + whole * whole);
        return share / capacitance;
    }
}
