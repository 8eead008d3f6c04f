package lampproof.prediction;

import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.quasistatic.ConductedNoise;

/**
 * The corner that the filter has, and the one that it would need for every harmonic to keep its limits: the choke is
 * changed and its damping with the square root, so that the filter stays damped as it is.
 */
public final class NeededFilter {

    private static final int TRIALS_PER_DECADE = 48;
    private static final int DECADES = 4;

    private NeededFilter() {}

    /** Corner of the choke with both capacitors [Hz]; 0 without them. */
    public static double corner(Driver driver) {
        double product = driver.filter().inductance() * (driver.filter().capacitance() + driver.busCapacitance());
        return product > 0 ? 1 / (2 * Math.PI * Math.sqrt(product)) : 0;
    }

    /** The highest corner with which every limit is kept [Hz]; 0 when none within four decades of the choke does. */
    public static double corner(ConductedNoise noise, Driver driver) {
        int broken = -DECADES * TRIALS_PER_DECADE - 1;
        int kept = DECADES * TRIALS_PER_DECADE + 1;
        while (kept - broken > 1) {
            int middle = Math.floorDiv(kept + broken, 2);
            if (kept(noise.through(with(driver, factor(middle))))) {
                kept = middle;
            } else {
                broken = middle;
            }
        }
        return kept > DECADES * TRIALS_PER_DECADE ? 0 : corner(with(driver, factor(kept)));
    }

    private static double factor(int trial) {
        return Math.pow(10, (double) trial / TRIALS_PER_DECADE);
    }

    private static boolean kept(ConductedNoise noise) {
        return NoiseMargin.quasiPeak(noise.frequency(), noise::atCrest).decibels() >= 0
                && NoiseMargin.average(noise.frequency(), noise::mean).decibels() >= 0;
    }

    /** The driver with so many times its choke [-]. */
    static Driver with(Driver driver, double factor) {
        Filter filter = driver.filter();
        return driver.with(new Filter(
                filter.fuseResistance(),
                filter.inductance() * factor,
                filter.resistance(),
                filter.damping() * Math.sqrt(factor),
                filter.capacitance()));
    }
}
