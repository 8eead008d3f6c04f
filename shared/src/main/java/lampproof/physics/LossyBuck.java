package lampproof.physics;

/**
 * Output voltage and efficiency of a step-down converter in continuous conduction with resistances and a diode drop.
 *
 * <p>{@code V = (D Vg - D' VD) / (1 + (RL + D Ron) / R)}; {@code eta = V / (D Vg)}.
 *
 * <p>Valid for small ripple. Neglects switching loss and ripple of the inductor current.
 *
 * <p>Source: averaged model of R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020,
 * sect. 3.4 and eq. (3.24); the terms of switch and diode derived by the same method.
 *
 * @param load load resistance [Ohm]
 * @param inductorResistance winding resistance [Ohm]
 * @param switchResistance on-resistance of the switch [Ohm]
 * @param diodeDrop diode voltage [V]
 */
public record LossyBuck(double load, double inductorResistance, double switchResistance, double diodeDrop) {

    /** Checks the range of the formulas. */
    public LossyBuck {
        Require.positive("load [Ohm]", load);
        Require.notNegative("inductor resistance [Ohm]", inductorResistance);
        Require.notNegative("switch resistance [Ohm]", switchResistance);
        Require.notNegative("diode drop [V]", diodeDrop);
    }

    /** Output voltage [V], at an input voltage [V] and a duty [-]. */
    public double outputVoltage(double inputVoltage, double duty) {
        Require.positive("input voltage [V]", inputVoltage);
        Require.within("duty [-]", duty, 0, 1);
        return (duty * inputVoltage - (1 - duty) * diodeDrop)
                / (1 + (inductorResistance + duty * switchResistance) / load);
    }

    /** Efficiency [-], at an input voltage [V] and a duty above 0 [-]. */
    public double efficiency(double inputVoltage, double duty) {
        Require.positive("duty [-]", duty);
        return outputVoltage(inputVoltage, duty) / (duty * inputVoltage);
    }
}
