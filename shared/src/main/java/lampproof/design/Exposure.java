package lampproof.design;

/**
 * What can happen to a lamp besides ordinary use, and what protects it.
 *
 * @param voltageLimit output voltage at which the control cell stops for good [V]
 * @param currentLimit switch current at which the control cell ends an on-time [A]
 * @param blanking time after turn-on in which that current is ignored [s]
 * @param restart time without a current zero after which a boundary cell closes its switch all the same [s]
 * @param shortResistance resistance of a string that is shorted [Ohm]
 * @param surge surge on the mains
 * @param powerUpAngle line angle at which the line comes on to a dead lamp [rad]
 * @param ratings what the parts are rated for
 * @param derating how much of that ordinary use may take
 */
public record Exposure(
        double voltageLimit,
        double currentLimit,
        double blanking,
        double restart,
        double shortResistance,
        Surge surge,
        double powerUpAngle,
        Ratings ratings,
        Derating derating) {

    /**
     * What parts are rated for.
     *
     * @param busVoltage bus capacitor [V]
     * @param outputVoltage output capacitor [V]
     * @param switchVoltage switch [V]
     * @param switchCurrent peak current of the switch [A]
     * @param diodeVoltage diode [V]
     * @param diodeCurrent mean current of the diode [A]
     * @param bridgeVoltage a bridge diode [V]
     * @param bridgeCurrent mean current of a bridge diode [A]
     */
    public record Ratings(
            double busVoltage,
            double outputVoltage,
            double switchVoltage,
            double switchCurrent,
            double diodeVoltage,
            double diodeCurrent,
            double bridgeVoltage,
            double bridgeCurrent) {}
}
