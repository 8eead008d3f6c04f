package lampproof.physics;

/**
 * Heat of a linear regulator or of a bias supply that drops a bus to a low voltage.
 *
 * <p>{@code P = (Vin - Vout) I}.
 *
 * <p>Valid for a constant input voltage; on a swinging bus put in its mean while current flows.
 *
 * <p>Source: J. M. Jacob, Power Electronics: Principles and Applications, ex. 1.6a.
 */
public final class LinearDissipation {

    private LinearDissipation() {}

    /**
     * Heat of the series element.
     *
     * @param inputVoltage input voltage [V]
     * @param outputVoltage output voltage, not above the input voltage [V]
     * @param current current [A]
     * @return loss [W]
     */
    public static double power(double inputVoltage, double outputVoltage, double current) {
        Require.within("output voltage [V]", outputVoltage, 0, inputVoltage);
        Require.notNegative("current [A]", current);
        return (inputVoltage - outputVoltage) * current;
    }
}
