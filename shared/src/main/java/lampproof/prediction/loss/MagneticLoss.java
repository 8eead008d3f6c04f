package lampproof.prediction.loss;

import lampproof.design.Driver;
import lampproof.design.Winding;
import lampproof.physics.CopperResistivity;
import lampproof.physics.DowellResistance;
import lampproof.physics.SkinDepth;
import lampproof.quasistatic.CellCycle;

/**
 * Core loss of the inductor, and what skin and proximity add to its copper loss.
 *
 * <p>Core: improved generalised Steinmetz equation on the flux triangle of each angle. Copper: Dowell's ratio at the
 * frequency of the sine that has the same rms value and the same rms slope as the ripple triangle, after W. G. Hurley,
 * E. Gath, J. G. Breslin, Optimizing the AC resistance of multilayer transformer windings with arbitrary current
 * waveforms, IEEE Trans. Power Electronics 15(2), 2000 (from memory).
 */
final class MagneticLoss {

    private static final double POROSITY = 0.85;

    private final Driver driver;
    private final Winding winding;
    private final HalfCycleMean mean;
    private final double resistivity;

    MagneticLoss(Driver driver, HalfCycleMean mean) {
        this.driver = driver;
        this.winding = driver.inductor().winding();
        this.mean = mean;
        this.resistivity = CopperResistivity.at(Winding.TEMPERATURE);
    }

    double core() {
        return winding.core().volume() * mean.ofCycles((point, cycle) -> coreDensity(cycle));
    }

    private double coreDensity(CellCycle cycle) {
        double swing = winding.flux(driver.inductor().inductance(), ripple(cycle));
        double fall = fallTime(cycle);
        return swing > 0 && fall > 0
                ? winding.material().loss().triangle(swing, cycle.onTime(), fall, cycle.period())
                : 0;
    }

    double proximity() {
        return driver.inductor().resistance() * mean.ofCycles((point, cycle) -> addedSquare(cycle));
    }

    /** Square of the ripple current times what its resistance has more than the direct-current one [A^2]. */
    private double addedSquare(CellCycle cycle) {
        double current = cycle.inductorCharge() / cycle.period();
        double square = cycle.inductorSquare() / cycle.period() - current * current;
        double fall = fallTime(cycle);
        return square > 0 && fall > 0 ? square * (ratio(cycle, square, fall) - 1) : 0;
    }

    private double ratio(CellCycle cycle, double square, double fall) {
        double slopes = (1 / cycle.onTime() + 1 / fall) / cycle.period();
        double frequency = ripple(cycle) * Math.sqrt(slopes / square) / (2 * Math.PI);
        double depth = SkinDepth.of(resistivity, frequency);
        double thickness = DowellResistance.thickness(winding.wireDiameter(), POROSITY, depth);
        return DowellResistance.ratio(thickness, winding.layers());
    }

    private static double ripple(CellCycle cycle) {
        return cycle.topCurrent() - cycle.trough();
    }

    /** Time in which the current falls; where the diode never takes over it swings back until the next turn-on. */
    private static double fallTime(CellCycle cycle) {
        return cycle.diode().time() > 0 ? cycle.diode().time() : cycle.period() - cycle.onTime();
    }
}
