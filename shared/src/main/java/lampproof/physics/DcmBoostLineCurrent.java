package lampproof.physics;

/**
 * Line current, duty and mode limit of a step-up rectifier at constant duty in discontinuous conduction.
 *
 * <p>{@code ig = (d^2 Ts / (2 L)) vg / (1 - vg / V)}; {@code Re = 2 L / (d^2 Ts)}; discontinuous at all angles while
 * {@code d < 1 - VM / V}; when the duty follows the line instead, {@code L < (1 - VM / V) Re Ts / 2} with
 * {@code Re = VM^2 / (2 P)}.
 *
 * <p>Valid for a sinusoidal line whose crest stays below a constant output voltage. Neglects losses and output ripple.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.2.1-21.2.2,
 * eq. (21.24), (21.31), (21.35), (21.36).
 *
 * @param linePeak crest of the line voltage [V]
 * @param outputVoltage output voltage, above the line peak [V]
 * @param inductance inductance [H]
 * @param frequency switching frequency [Hz]
 */
public record DcmBoostLineCurrent(double linePeak, double outputVoltage, double inductance, double frequency) {

    /** Checks the range of the formulas. */
    public DcmBoostLineCurrent {
        Require.positive("line peak [V]", linePeak);
        Require.below("line peak [V]", linePeak, "output voltage [V]", outputVoltage);
        Require.positive("inductance [H]", inductance);
        Require.positive("frequency [Hz]", frequency);
    }

    /** Resistance [Ohm] that the converter shows near the zero crossing at a duty [-]. */
    public double effectiveResistance(double duty) {
        Require.between("duty [-]", duty, 0, 1);
        return 2 * inductance * frequency / (duty * duty);
    }

    /** Line current, averaged over the switching period [A], at a duty [-] and an angle [rad]. */
    public double at(double duty, double angle) {
        double rectified = linePeak * Math.abs(Math.sin(angle));
        return rectified / (effectiveResistance(duty) * (1 - rectified / outputVoltage));
    }

    /**
     * Line current at the crest [A], averaged over the switching period, that draws a mean power at constant duty;
     * inductance and frequency do not enter.
     *
     * @param linePeak crest of the line voltage [V]
     * @param outputVoltage output voltage, above the line peak [V]
     * @param inputPower mean power [W]
     */
    public static double crestCurrent(double linePeak, double outputVoltage, double inputPower) {
        Require.positive("input power [W]", inputPower);
        double steepness = linePeak / outputVoltage;
        return Math.PI * inputPower / (linePeak * (1 - steepness) * PeakedSineIntegral.first(steepness));
    }

    /** Duty [-] that draws a mean power [W]. */
    public double duty(double inputPower) {
        Require.positive("input power [W]", inputPower);
        double integral = PeakedSineIntegral.first(linePeak / outputVoltage);
        return Math.sqrt(2 * inductance * frequency * Math.PI * inputPower / integral) / linePeak;
    }

    /** Peak inductor current at the line crest [A], at a duty [-]. */
    public double peakCurrent(double duty) {
        return linePeak * duty / (inductance * frequency);
    }

    /** Largest duty that is discontinuous at all angles [-]. */
    public double largestDuty() {
        return 1 - linePeak / outputVoltage;
    }

    /** Largest mean power that is discontinuous at all angles [W]. */
    public double largestPower() {
        double integral = PeakedSineIntegral.first(linePeak / outputVoltage);
        return linePeak * linePeak / effectiveResistance(largestDuty()) * integral / Math.PI;
    }

    /** Largest inductance [H] that keeps a duty that follows the line discontinuous at a mean power [W]. */
    public double largestInductance(double inputPower) {
        Require.positive("input power [W]", inputPower);
        double resistance = linePeak * linePeak / (2 * inputPower);
        return (1 - linePeak / outputVoltage) * resistance / (2 * frequency);
    }
}
