package lampproof.prediction.loss;

import lampproof.design.CapacitorLosses;
import lampproof.design.Dimming;
import lampproof.design.Driver;

/** The capacitors of filter and bus, the linear supply of the controller, and the load that a dimmer needs. */
final class SupplyLoss {

    private final Driver driver;
    private final HalfCycleMean mean;

    SupplyLoss(Driver driver, HalfCycleMean mean) {
        this.driver = driver;
        this.mean = mean;
    }

    /** What controller and gate take from the bus, less what the gate burns itself [W]. */
    double bias(double gateLoss) {
        double charge = driver.edges().gateCharge();
        return mean.of(point -> point.busVoltage() * (driver.supplyCurrent() + point.gateCurrent(charge))) - gateLoss;
    }

    /**
     * The capacitors of filter and bus [W], whose rms ripple current [A] is given.
     *
     * <p>The filter capacitor sees the line voltage: {@code V^2 w C tan d}. The bus capacitor: {@code I^2 ESR}.
     */
    double capacitors(double busRipple) {
        CapacitorLosses parts = driver.capacitorLosses();
        double voltage = driver.line().voltage();
        double reactive = voltage
                * voltage
                * driver.line().angularFrequency()
                * driver.filter().capacitance();
        return reactive * parts.filterDissipation() + busRipple * busRipple * parts.busResistance();
    }

    /** The bleeder behind a dimmer that lets the whole half cycle through [W]. */
    double bleeder() {
        Dimming dimming = driver.dimming();
        return mean.of(point -> point.lineVoltage() * Bleeder.current(dimming, point));
    }
}
