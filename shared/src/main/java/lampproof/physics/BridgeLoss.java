package lampproof.physics;

/**
 * Mean current and heat of a bridge rectifier behind a sinusoidal line current.
 *
 * <p>{@code Iavg = (2/pi) sqrt 2 P / Vac}; {@code P = 2 Vf Iavg}.
 *
 * <p>Valid for unity power factor and two diodes in series with a constant drop each.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016, bridge rectifier section.
 */
public final class BridgeLoss {

    private BridgeLoss() {}

    /**
     * Mean rectified line current.
     *
     * @param inputPower mean power from the line [W]
     * @param lineRms rms line voltage [V]
     * @return mean current [A]
     */
    public static double meanCurrent(double inputPower, double lineRms) {
        Require.notNegative("input power [W]", inputPower);
        Require.positive("line rms [V]", lineRms);
        return 2 / Math.PI * Math.sqrt(2) * inputPower / lineRms;
    }

    /**
     * Loss of the bridge.
     *
     * @param meanCurrent mean rectified current [A]
     * @param drop drop of one diode [V]
     * @return loss [W]
     */
    public static double power(double meanCurrent, double drop) {
        Require.notNegative("mean current [A]", meanCurrent);
        Require.notNegative("drop [V]", drop);
        return 2 * drop * meanCurrent;
    }
}
