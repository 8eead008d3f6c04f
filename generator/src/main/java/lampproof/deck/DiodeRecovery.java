package lampproof.deck;

import lampproof.design.Rectifier;
import lampproof.physics.SoftRecovery;

/**
 * The store of a diode's charge, in the elements of a deck: its voltage is the stored current times a resistance.
 *
 * @param junctionCurrent saturation current of the junction, which carries the charge that leaves the diode and the charge that returns to the store [A]
 * @param resistance resistance of the store [Ohm]
 * @param capacitance its capacitance, which makes its time constant the lifetime of the charge [F]
 * @param conductance reverse current for each volt of the store [S]
 */
record DiodeRecovery(double junctionCurrent, double resistance, double capacitance, double conductance) {

    private static final double RESISTANCE = 1e3;

    static DiodeRecovery of(Rectifier diode) {
        double share = diode.recoveryTime() > 0 ? SoftRecovery.SHARE : 0;
        return new DiodeRecovery(
                diode.saturationCurrent() * (1 + share),
                RESISTANCE,
                SoftRecovery.lifetime(diode.recoveryTime()) / RESISTANCE,
                share / RESISTANCE);
    }
}
