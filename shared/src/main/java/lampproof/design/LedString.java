package lampproof.design;

/**
 * The LED string as a knee and a slope: {@code v = V0 + Rd i}.
 *
 * @param knee V0 [V]
 * @param resistance dynamic resistance Rd [Ohm]
 * @param current mean current that the driver is set for [A]
 */
public record LedString(double knee, double resistance, double current) {

    /** String voltage at a current [V]. */
    public double voltage(double at) {
        return knee + resistance * at;
    }

    /** String current at a voltage [A]; zero below the knee. */
    public double current(double atVoltage) {
        return atVoltage <= knee ? 0 : (atVoltage - knee) / resistance;
    }
}
