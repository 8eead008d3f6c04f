package lampproof.physics;

/**
 * Timing and currents of a step-down converter behind a rectifier, in boundary conduction with constant on-time.
 *
 * <p>With {@code m = V / VM}, {@code alpha = asin m}, {@code w = pi - 2 alpha}: mean excess of the line over the output
 * {@code E1 = (2 VM cos alpha - V w) / pi}; {@code ton = 2 L P / (V E1)}; period {@code ton vg / V}; triangles of peak
 * {@code (vg - V) ton / L}, of which the switch carries the share {@code V / vg}.
 *
 * <p>Valid for a sinusoidal line whose crest stays above a constant output voltage. Neglects losses, the minimum
 * off-time and the bus capacitor.
 *
 * <p>Source: own integration of the triangles over the half cycle; triangle rms: R. W. Erickson, D. Maksimović,
 * Fundamentals of Power Electronics, 3rd ed., 2020, app. A.
 *
 * @param linePeak crest of the line voltage [V]
 * @param outputVoltage output voltage, below the line peak [V]
 * @param inputPower mean power from the line [W]
 * @param inductance inductance [H]
 */
public record BoundaryBuck(double linePeak, double outputVoltage, double inputPower, double inductance) {

    /** Checks the range of the formulas. */
    public BoundaryBuck {
        Require.positive("output voltage [V]", outputVoltage);
        Require.below("output voltage [V]", outputVoltage, "line peak [V]", linePeak);
        Require.positive("input power [W]", inputPower);
        Require.positive("inductance [H]", inductance);
    }

    /** Line voltage above the output voltage, averaged over the half cycle [V]. */
    public double meanExcess() {
        return (2 * linePeak * cosine() - outputVoltage * conductionAngle()) / Math.PI;
    }

    /** Angle of each half cycle in which current flows [rad]. */
    public double conductionAngle() {
        return BuckLineCurrent.conductionAngle(ratio());
    }

    /** Constant on-time [s]. */
    public double onTime() {
        return 2 * inductance * inputPower / (outputVoltage * meanExcess());
    }

    /** Peak current of inductor, switch and diode, at the line crest [A]. */
    public double peakCurrent() {
        return (linePeak - outputVoltage) * onTime() / inductance;
    }

    /** Switching frequency [Hz] at an angle within conduction [rad]; lowest at the crest. */
    public double switchingFrequency(double angle) {
        double rectified = linePeak * Math.abs(Math.sin(angle));
        Require.below("output voltage [V]", outputVoltage, "rectified voltage [V]", rectified);
        return outputVoltage / (onTime() * rectified);
    }

    /** Inductor mean current over the half cycle [A]. */
    public double inductorMean() {
        return meanExcess() * onTime() / (2 * inductance);
    }

    /** Inductor rms current [A]. */
    public double inductorRms() {
        double squares = conductionAngle() * (0.5 + ratio() * ratio()) - 3 * ratio() * cosine();
        return rms(squares);
    }

    /** Switch rms current [A]. */
    public double switchRms() {
        return rms(switchSquares());
    }

    /** Diode rms current [A]. */
    public double diodeRms() {
        return Math.sqrt(inductorRms() * inductorRms() - switchRms() * switchRms());
    }

    /** Integral of (sin - m)^2 m / sin over the conducting angle. */
    private double switchSquares() {
        double cosecant = 2 * Math.log(1 / Math.tan(Math.asin(ratio()) / 2));
        return ratio() * (2 * cosine() - 2 * ratio() * conductionAngle() + ratio() * ratio() * cosecant);
    }

    /** Rms of triangles whose squared height, integrated over the half cycle, is given in units of the line peak. */
    private double rms(double squares) {
        return linePeak * onTime() / inductance * Math.sqrt(squares / (3 * Math.PI));
    }

    private double ratio() {
        return outputVoltage / linePeak;
    }

    private double cosine() {
        return Math.sqrt(1 - ratio() * ratio());
    }
}
