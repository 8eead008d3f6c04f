package lampproof.physics;

/**
 * Loss of an RC snubber across a switch.
 *
 * <p>{@code P = C (Voff^2 + Von^2) f / 2}: charging a capacitor to a voltage through a resistor burns as much as it stores,
 * discharging it burns the rest. With equal voltages this is {@code C V^2 f}, whatever the resistor.
 *
 * <p>Valid while the time constant is short against on-time and off-time, and as a bound where the voltage rises slower
 * than the time constant.
 *
 * <p>Source: P. C. Todd, Snubber Circuits: Theory, Design and Application, Unitrode seminar SEM-900 topic 2, 1993,
 * {@code P = C V^2 f} (from memory); the form for two voltages is derived here.
 */
public final class SnubberLoss {

    private SnubberLoss() {}

    /**
     * Mean loss, resistor and switch together.
     *
     * @param capacitance capacitor of the snubber [F]
     * @param offVoltage voltage to which the opening switch rises [V]
     * @param onVoltage voltage at which it closes [V]
     * @param frequency switching frequency [Hz]
     * @return mean loss [W]
     */
    public static double power(double capacitance, double offVoltage, double onVoltage, double frequency) {
        Require.notNegative("capacitance [F]", capacitance);
        Require.positive("frequency [Hz]", frequency);
        return 0.5 * capacitance * (offVoltage * offVoltage + onVoltage * onVoltage) * frequency;
    }
}
