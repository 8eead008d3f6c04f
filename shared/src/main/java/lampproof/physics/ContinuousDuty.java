package lampproof.physics;

/**
 * Duty of a converter in continuous conduction with constant drops of switch and diode.
 *
 * <p>Step-down {@code D = (Vo + VF) / (Vg + VF - Vsat)}; step-up {@code D = (Vo + VF - Vg) / (Vo + VF - Vsat)}.
 *
 * <p>Valid for constant drops; drops of 0 give the ideal duty. Neglects resistances.
 *
 * <p>Source: volt-second balance; step-down: S. Franco, Design with Operational Amplifiers and Analog Integrated
 * Circuits, 3rd ed., ch. 11, ex. 11.17.
 */
public final class ContinuousDuty {

    private ContinuousDuty() {}

    /**
     * Duty of a step-down converter.
     *
     * @param inputVoltage input voltage [V]
     * @param outputVoltage output voltage, not above the input voltage less the switch drop [V]
     * @param switchDrop voltage across the switch when on [V]
     * @param diodeDrop voltage across the diode when on [V]
     * @return duty [-]
     */
    public static double buck(double inputVoltage, double outputVoltage, double switchDrop, double diodeDrop) {
        Require.positive("input voltage [V]", inputVoltage);
        Require.notNegative("switch drop [V]", switchDrop);
        Require.notNegative("diode drop [V]", diodeDrop);
        Require.within("output voltage [V]", outputVoltage, 0, inputVoltage - switchDrop);
        return (outputVoltage + diodeDrop) / (inputVoltage + diodeDrop - switchDrop);
    }

    /**
     * Duty of a step-up converter.
     *
     * @param inputVoltage input voltage, above the switch drop [V]
     * @param outputVoltage output voltage, not below the input voltage less the diode drop [V]
     * @param switchDrop voltage across the switch when on [V]
     * @param diodeDrop voltage across the diode when on [V]
     * @return duty [-]
     */
    public static double boost(double inputVoltage, double outputVoltage, double switchDrop, double diodeDrop) {
        Require.notNegative("switch drop [V]", switchDrop);
        Require.notNegative("diode drop [V]", diodeDrop);
        Require.below("switch drop [V]", switchDrop, "input voltage [V]", inputVoltage);
        Require.within("input voltage [V]", inputVoltage, 0, outputVoltage + diodeDrop);
        return (outputVoltage + diodeDrop - inputVoltage) / (outputVoltage + diodeDrop - switchDrop);
    }
}
