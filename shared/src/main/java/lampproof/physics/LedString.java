package lampproof.physics;

/**
 * A string of equal LEDs as a straight line of voltage over current that moves with temperature.
 *
 * <p>{@code V = N (V0 + Rd I + k (Tj - Tref))}.
 *
 * <p>Valid for currents near those between which the line was fitted. Neglects the change of Rd with temperature.
 *
 * <p>Source: piecewise-linear diode, common practice, no source.
 *
 * @param count LEDs in series [-]
 * @param kneeVoltage voltage of one LED at zero current on the line [V]
 * @param resistance dynamic resistance of one LED [Ohm]
 * @param temperatureCoefficient change of the voltage of one LED with temperature, usually negative [V/K]
 * @param referenceTemperature junction temperature of the knee voltage [K]
 */
public record LedString(
        int count, double kneeVoltage, double resistance, double temperatureCoefficient, double referenceTemperature) {

    /** Checks the parameters. */
    public LedString {
        Require.within("LEDs in series [-]", count, 1, 10000);
        Require.positive("knee voltage [V]", kneeVoltage);
        Require.notNegative("dynamic resistance [Ohm]", resistance);
        Require.within("temperature coefficient [V/K]", temperatureCoefficient, -0.1, 0.1);
        Require.positive("reference temperature [K]", referenceTemperature);
    }

    /** String voltage [V] at a current [A] and a junction temperature [K]. */
    public double voltage(double current, double junctionTemperature) {
        Require.notNegative("string current [A]", current);
        Require.positive("junction temperature [K]", junctionTemperature);
        double shift = temperatureCoefficient * (junctionTemperature - referenceTemperature);
        return count * (kneeVoltage + resistance * current + shift);
    }

    /** String current [A] at a voltage [V] and a junction temperature [K]; zero below the knee. */
    public double current(double voltage, double junctionTemperature) {
        Require.positive("dynamic resistance [Ohm]", resistance);
        double excess = voltage - voltage(0, junctionTemperature);
        return Math.max(0, excess / dynamicResistance());
    }

    /** Dynamic resistance of the string [Ohm]. */
    public double dynamicResistance() {
        return count * resistance;
    }
}
