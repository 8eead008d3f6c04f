package lampproof.physics;

/**
 * A load of constant voltage behind a rectifier and a resistor, such as a string of LEDs straight on the mains.
 *
 * <p>{@code theta1 = asin(E / VM)}; {@code I = n (2 VM cos theta1 - E (pi - 2 theta1)) / (2 pi R)};
 * {@code Irms^2 = n int (VM sin - E)^2 / (2 pi R^2)} from theta1 to pi - theta1;
 * {@code PF = (E I + R Irms^2) / (Vrms Irms)}, with n conducting half cycles of each line cycle.
 *
 * <p>Valid for a sinusoidal line. Neglects rectifier drops and inductance.
 *
 * <p>Source: P. S. Bimbhra, Power Electronics, ex. 3.9, p. 71.
 *
 * @param linePeak crest of the line voltage [V]
 * @param loadVoltage constant voltage of the load, below the line peak [V]
 * @param resistance series resistance [Ohm]
 * @param halfCycles conducting half cycles of each line cycle, 1 or 2 [-]
 */
public record BackEmfRectifier(double linePeak, double loadVoltage, double resistance, int halfCycles) {

    /** Checks the range of the formulas. */
    public BackEmfRectifier {
        Require.notNegative("load voltage [V]", loadVoltage);
        Require.below("load voltage [V]", loadVoltage, "line peak [V]", linePeak);
        Require.positive("resistance [Ohm]", resistance);
        Require.within("conducting half cycles [-]", halfCycles, 1, 2);
    }

    /** Angle at which current begins [rad]. */
    public double startAngle() {
        return Math.asin(loadVoltage / linePeak);
    }

    /** Mean load current [A]. */
    public double meanCurrent() {
        double excess = 2 * linePeak * Math.cos(startAngle()) - loadVoltage * conductionAngle();
        return halfCycles * excess / (2 * Math.PI * resistance);
    }

    /** Rms load current [A]. */
    public double rmsCurrent() {
        double squares = (linePeak * linePeak / 2 + loadVoltage * loadVoltage) * conductionAngle()
                - 3 * linePeak * loadVoltage * Math.cos(startAngle());
        return Math.sqrt(halfCycles * squares / (2 * Math.PI)) / resistance;
    }

    /** Power of the constant-voltage load [W]. */
    public double loadPower() {
        return loadVoltage * meanCurrent();
    }

    /** Power of the resistor [W]. */
    public double resistorPower() {
        return resistance * rmsCurrent() * rmsCurrent();
    }

    /** Active over apparent power of the line [-]. */
    public double powerFactor() {
        return (loadPower() + resistorPower()) / (linePeak / Math.sqrt(2) * rmsCurrent());
    }

    private double conductionAngle() {
        return Math.PI - 2 * startAngle();
    }
}
