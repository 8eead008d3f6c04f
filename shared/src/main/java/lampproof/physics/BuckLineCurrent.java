package lampproof.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * Line-current shapes of a step-down converter behind a rectifier, which draws nothing while the line is below its
 * output.
 *
 * <p>With {@code m = V / VM} and conduction from {@code asin m} to {@code pi - asin m}: constant on-time in boundary
 * conduction {@code 1 - m / sin}; constant line current {@code 1}; constant inductor current {@code m / sin};
 * constant duty in discontinuous conduction {@code sin - m}.
 *
 * <p>Valid for a sinusoidal line and a constant output voltage. Neglects losses, the bus capacitor and the line
 * filter.
 *
 * <p>Source: mean inductor current times duty, own derivation; that distortion is unavoidable but can meet the
 * limits: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.2.1.
 */
public final class BuckLineCurrent {

    private BuckLineCurrent() {}

    /**
     * Angle of each half cycle in which current flows.
     *
     * @param outputRatio output voltage over line peak, from 0 to 1 [-]
     * @return conduction angle [rad]
     */
    public static double conductionAngle(double outputRatio) {
        Require.within("output ratio [-]", outputRatio, 0, 1);
        return Math.PI - 2 * Math.asin(outputRatio);
    }

    /**
     * Constant on-time in boundary conduction, in units of {@code ton V / (2 L)}.
     *
     * @param outputRatio output voltage over line peak, from 0 to below 1 [-]
     * @return the shape, with its harmonics
     */
    public static LineCurrentShape constantOnTime(double outputRatio) {
        return conducting(angle -> 1 - outputRatio / Math.sin(angle), outputRatio);
    }

    /**
     * Constant line current during conduction: a linear constant-current string or an ideal clamp of the input current.
     *
     * @param outputRatio output voltage over line peak, from 0 to below 1 [-]
     * @return the shape, with its harmonics
     */
    public static LineCurrentShape constantCurrent(double outputRatio) {
        return conducting(angle -> 1, outputRatio);
    }

    /**
     * Constant inductor current in continuous conduction, in units of that current.
     *
     * @param outputRatio output voltage over line peak, above 0 and below 1 [-]
     * @return the shape, with its harmonics
     */
    public static LineCurrentShape constantInductorCurrent(double outputRatio) {
        return conducting(angle -> outputRatio / Math.sin(angle), outputRatio);
    }

    /**
     * Constant duty in discontinuous conduction, in units of {@code d^2 Ts VM / (2 L)}.
     *
     * @param outputRatio output voltage over line peak, from 0 to below 1 [-]
     * @return the shape, with its harmonics
     */
    public static LineCurrentShape constantDuty(double outputRatio) {
        return conducting(angle -> Math.sin(angle) - outputRatio, outputRatio);
    }

    private static LineCurrentShape conducting(DoubleUnaryOperator current, double outputRatio) {
        double start = (Math.PI - conductionAngle(outputRatio)) / 2;
        return LineCurrentShape.of(current, start, Math.PI - start);
    }
}
