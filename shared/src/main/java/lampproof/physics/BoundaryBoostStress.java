package lampproof.physics;

/**
 * Currents over the line cycle in a step-up rectifier in boundary conduction with constant on-time.
 *
 * <p>{@code Ipk = 4 P / VM}; {@code k = 4 VM / (9 pi V)}; inductor rms {@code Ipk / sqrt 6}; switch rms
 * {@code Ipk sqrt(1/6 - k)}; diode rms {@code Ipk sqrt k}; diode mean {@code P / V}.
 *
 * <p>Valid for a sinusoidal line whose crest stays below a constant output voltage. Neglects losses, the minimum
 * off-time and the ripple of the output.
 *
 * <p>Source: triangles of peak vg ton / L from R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd
 * ed., 2020, sect. 21.3.3, integrated over the half cycle; peak: Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4.
 *
 * @param linePeak crest of the line voltage [V]
 * @param outputVoltage output voltage, above the line peak [V]
 * @param inputPower mean power from the line [W]
 */
public record BoundaryBoostStress(double linePeak, double outputVoltage, double inputPower) {

    /** Checks the range of the formulas. */
    public BoundaryBoostStress {
        Require.positive("line peak [V]", linePeak);
        Require.below("line peak [V]", linePeak, "output voltage [V]", outputVoltage);
        Require.positive("input power [W]", inputPower);
    }

    /** Peak current of inductor, switch and diode, at the line crest [A]. */
    public double peakCurrent() {
        return 4 * inputPower / linePeak;
    }

    /** Inductor rms current [A]. */
    public double inductorRms() {
        return peakCurrent() / Math.sqrt(6);
    }

    /** Switch rms current [A]. */
    public double switchRms() {
        return peakCurrent() * Math.sqrt(1.0 / 6 - diodeShare());
    }

    /** Switch mean current [A]. */
    public double switchMean() {
        return peakCurrent() / Math.PI - diodeMean();
    }

    /** Diode rms current [A]. */
    public double diodeRms() {
        return peakCurrent() * Math.sqrt(diodeShare());
    }

    /** Diode mean current [A]. */
    public double diodeMean() {
        return inputPower / outputVoltage;
    }

    /** Rms current of the output capacitor when the load draws a constant current [A]. */
    public double outputCapacitorRms() {
        return Math.sqrt(diodeRms() * diodeRms() - diodeMean() * diodeMean());
    }

    private double diodeShare() {
        return 4 * linePeak / (9 * Math.PI * outputVoltage);
    }
}
