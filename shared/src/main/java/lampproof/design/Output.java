package lampproof.design;

import lampproof.physics.CeramicBias;

/**
 * The capacitor across the string.
 *
 * @param capacitance capacitance at the working voltage [F]
 * @param nominal capacitance without voltage [F]
 * @param halfVoltage voltage at which half of that is left; infinite for a capacitor that voltage does not change [V]
 */
public record Output(double capacitance, double nominal, double halfVoltage) {

    /** A capacitor that voltage does not change [F]. */
    public Output(double capacitance) {
        this(capacitance, capacitance, Double.POSITIVE_INFINITY);
    }

    /** Capacitance for small changes [F] at a voltage [V]. */
    public double capacitanceAt(double voltage) {
        return Double.isInfinite(halfVoltage) ? capacitance : nominal * CeramicBias.left(voltage, halfVoltage);
    }

    /** Stored energy [J] at a voltage [V]. */
    public double energy(double voltage) {
        return CeramicBias.energy(nominal, halfVoltage, voltage);
    }
}
