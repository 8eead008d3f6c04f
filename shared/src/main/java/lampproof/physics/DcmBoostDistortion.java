package lampproof.physics;

/**
 * Power factor, distortion and harmonics of a step-up rectifier at constant duty in discontinuous conduction.
 *
 * <p>Current proportional to {@code sin / (1 - sin / M)}; with {@code a = 1 / M},
 * {@code Y = int sin^2 / (1 - a sin)}, {@code X = int sin^2 / (1 - a sin)^2} over half a cycle:
 * {@code PF = sqrt(2/pi) Y / sqrt X}; {@code THD = sqrt(1 / PF^2 - 1)}.
 *
 * <p>Valid for an output ratio from above 1 to 1000. Neglects losses, output ripple and the line filter.
 *
 * <p>Source: waveform from R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020,
 * eq. (21.31); curve first published by K.-H. Liu, Y.-L. Lin, Current waveform distortion in power factor correction
 * circuits employing discontinuous-mode boost converters, IEEE PESC 1989 (from memory, not read again).
 */
public final class DcmBoostDistortion {

    private DcmBoostDistortion() {}

    /**
     * Power factor.
     *
     * @param outputRatio output voltage over line peak, above 1 [-]
     * @return power factor [-]
     */
    public static double powerFactor(double outputRatio) {
        double steepness = 1 / outputRatio;
        return Math.sqrt(2 / Math.PI)
                * PeakedSineIntegral.first(steepness)
                / Math.sqrt(PeakedSineIntegral.second(steepness));
    }

    /**
     * Total harmonic distortion.
     *
     * @param outputRatio output voltage over line peak, above 1 [-]
     * @return total harmonic distortion, over the fundamental [-]
     */
    public static double thd(double outputRatio) {
        return Math.sqrt(Math.pow(powerFactor(outputRatio), -2) - 1);
    }

    /**
     * Shape of the line current, in units of the current that a resistor Re would draw at the crest.
     *
     * @param outputRatio output voltage over line peak, above 1 [-]
     * @return the shape, with its harmonics
     */
    public static LineCurrentShape shape(double outputRatio) {
        Require.between("output ratio [-]", outputRatio, 1, Double.POSITIVE_INFINITY);
        return LineCurrentShape.of(angle -> Math.sin(angle) / (1 - Math.sin(angle) / outputRatio), 0, Math.PI);
    }
}
