package lampproof.quasistatic;

/**
 * The driver at one angle of the line half cycle, averaged over a switching cycle.
 *
 * @param angle line angle [rad]
 * @param lineVoltage line voltage [V]
 * @param lineCurrent line current [A]
 * @param bridgeCurrent current through the bridge [A]
 * @param busVoltage bus voltage [V]
 * @param busRipple swing of the bus voltage within a switching cycle [V]
 * @param inputCurrent current that the converter takes from the bus [A]
 * @param outputVoltage voltage of the output capacitor [V]
 * @param outputCurrent current that the converter gives to output capacitor and string [A]
 * @param stringCurrent string current [A]
 * @param cycle the switching cycle, null where the bus cannot drive the inductor
 */
public record AnglePoint(
        double angle,
        double lineVoltage,
        double lineCurrent,
        double bridgeCurrent,
        double busVoltage,
        double busRipple,
        double inputCurrent,
        double outputVoltage,
        double outputCurrent,
        double stringCurrent,
        CellCycle cycle) {

    /** The same with so many times the bridge current. */
    AnglePoint withBridgeCurrent(double factor) {
        double more = (factor - 1) * bridgeCurrent;
        return new AnglePoint(
                angle,
                lineVoltage,
                lineCurrent + more,
                bridgeCurrent + more,
                busVoltage,
                busRipple,
                inputCurrent,
                outputVoltage,
                outputCurrent,
                stringCurrent,
                cycle);
    }

    /** Whether the switch takes over while the diode still conducts. */
    public boolean continuous() {
        return cycle != null && cycle.continuous();
    }

    /** Mean current that a gate takes with a charge of so much [C] in each cycle; in [A]. */
    public double gateCurrent(double charge) {
        return cycle == null ? 0 : charge / cycle.period();
    }

    /** Mean square of the switching ripple in the current that the converter takes [A^2]. */
    double inputRippleSquare(boolean stepUp) {
        if (cycle == null) {
            return 0;
        }
        double square = stepUp ? cycle.inductorSquare() : cycle.switchSquare();
        return Math.max(0, square / cycle.period() - inputCurrent * inputCurrent);
    }
}
