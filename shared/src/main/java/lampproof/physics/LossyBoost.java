package lampproof.physics;

/**
 * Gain and efficiency of a step-up converter in continuous conduction with resistances and a diode drop.
 *
 * <p>{@code V / Vg = (1 / D') (1 - D' VD / Vg) / (1 + (RL + D Ron + D' RD) / (D'^2 R))}; {@code eta = D' V / Vg};
 * largest gain with inductor resistance alone {@code 1 / (2 sqrt(RL / R))} at {@code D = 1 - sqrt(RL / R)}.
 *
 * <p>Valid for small ripple. Neglects switching loss and ripple of the inductor current.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, eq. (3.14), (3.18),
 * (3.23), (3.33)-(3.35).
 *
 * @param load load resistance [Ohm]
 * @param inductorResistance winding resistance [Ohm]
 * @param switchResistance on-resistance of the switch [Ohm]
 * @param diodeDrop constant part of the diode voltage [V]
 * @param diodeResistance slope resistance of the diode [Ohm]
 */
public record LossyBoost(
        double load, double inductorResistance, double switchResistance, double diodeDrop, double diodeResistance) {

    /** Checks the range of the formulas. */
    public LossyBoost {
        Require.positive("load [Ohm]", load);
        Require.notNegative("inductor resistance [Ohm]", inductorResistance);
        Require.notNegative("switch resistance [Ohm]", switchResistance);
        Require.notNegative("diode drop [V]", diodeDrop);
        Require.notNegative("diode resistance [Ohm]", diodeResistance);
    }

    /** A converter whose only loss is its winding: load and winding resistance [Ohm]. */
    public static LossyBoost withInductorResistance(double load, double inductorResistance) {
        return new LossyBoost(load, inductorResistance, 0, 0, 0);
    }

    /** Output over input voltage [-], at an input voltage [V] and a duty [-]. */
    public double conversionRatio(double inputVoltage, double duty) {
        Require.positive("input voltage [V]", inputVoltage);
        Require.notNegative("duty [-]", duty);
        Require.below("duty [-]", duty, "its upper end", 1);
        double rest = 1 - duty;
        double series = inductorResistance + duty * switchResistance + rest * diodeResistance;
        return 1 / rest * (1 - rest * diodeDrop / inputVoltage) / (1 + series / (rest * rest * load));
    }

    /** Efficiency [-], at an input voltage [V] and a duty [-]. */
    public double efficiency(double inputVoltage, double duty) {
        return (1 - duty) * conversionRatio(inputVoltage, duty);
    }

    /** Inductor current [A], at an input voltage [V] and a duty [-]. */
    public double inductorCurrent(double inputVoltage, double duty) {
        return inputVoltage * conversionRatio(inputVoltage, duty) / (load * (1 - duty));
    }

    /** Largest gain that the winding resistance alone allows [-]. */
    public double largestRatio() {
        return 1 / (2 * Math.sqrt(inductorResistance / load));
    }

    /** Duty of the largest gain that the winding resistance alone allows [-]. */
    public double dutyOfLargestRatio() {
        return 1 - Math.sqrt(inductorResistance / load);
    }
}
