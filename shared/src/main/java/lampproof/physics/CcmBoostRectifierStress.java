package lampproof.physics;

/**
 * Currents over the line cycle in a step-up rectifier in continuous conduction that draws a sinusoidal current.
 *
 * <p>With {@code m = VM / V}: switch rms {@code Iac sqrt(1 - 8 m / (3 pi))}; diode rms
 * {@code Iac sqrt(8 m / (3 pi))}; switch mean {@code Iac (2 sqrt 2 / pi) (1 - pi m / 4)}; diode mean
 * {@code Iac m / sqrt 2}; output capacitor rms {@code sqrt(ID rms^2 - ID mean^2)}.
 *
 * <p>Valid for unity power factor and a line crest below the output voltage. Neglects losses and inductor ripple.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.5, eq.
 * (21.122)-(21.126), table 21.3, where the switch mean is printed with pi/8: mean line current less diode mean gives
 * pi/4; capacitor: Infineon DN 2013-01 rev. 1.1, 2016, eq. 34.
 *
 * @param lineRms rms line voltage [V]
 * @param outputVoltage output voltage, not below the line crest [V]
 * @param inputPower mean power from the line [W]
 */
public record CcmBoostRectifierStress(double lineRms, double outputVoltage, double inputPower) {

    /** Checks the range of the formulas. */
    public CcmBoostRectifierStress {
        Require.positive("line rms [V]", lineRms);
        Require.positive("input power [W]", inputPower);
        Require.within("line peak over output voltage [-]", Math.sqrt(2) * lineRms / outputVoltage, 0, 1);
    }

    /** Line and inductor rms current [A]. */
    public double lineCurrent() {
        return inputPower / lineRms;
    }

    /** Switch rms current [A]. */
    public double switchRms() {
        return lineCurrent() * Math.sqrt(1 - diodeShare());
    }

    /** Switch mean current [A]. */
    public double switchMean() {
        return lineCurrent() * 2 * Math.sqrt(2) / Math.PI * (1 - Math.PI * ratio() / 4);
    }

    /** Diode rms current [A]. */
    public double diodeRms() {
        return lineCurrent() * Math.sqrt(diodeShare());
    }

    /** Diode mean current [A]. */
    public double diodeMean() {
        return lineCurrent() * ratio() / Math.sqrt(2);
    }

    /** Rms current of the output capacitor when the load draws a constant current [A]. */
    public double outputCapacitorRms() {
        return Math.sqrt(diodeRms() * diodeRms() - diodeMean() * diodeMean());
    }

    private double diodeShare() {
        return 8 * ratio() / (3 * Math.PI);
    }

    private double ratio() {
        return Math.sqrt(2) * lineRms / outputVoltage;
    }
}
