package lampproof.physics;

/**
 * Inductance and peak current of a step-up rectifier in continuous conduction, from the ripple at the crest.
 *
 * <p>{@code L = Vac^2 (1 - sqrt 2 Vac / Vo) / (r P fs)}; {@code Ipk = (sqrt 2 P / Vac) (1 + r / 2)}, with the
 * peak-to-peak ripple r over the crest of the line current.
 *
 * <p>Valid for unity power factor at the lowest line voltage. Neglects losses.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016, inductor section.
 *
 * @param lineRms lowest rms line voltage [V]
 * @param outputVoltage output voltage, above the line crest [V]
 * @param inputPower mean power from the line [W]
 * @param ripple peak-to-peak ripple over the crest current, up to 2 [-]
 */
public record CcmBoostInductor(double lineRms, double outputVoltage, double inputPower, double ripple) {

    /** Checks the range of the formulas. */
    public CcmBoostInductor {
        Require.positive("line rms [V]", lineRms);
        Require.below("line peak [V]", Math.sqrt(2) * lineRms, "output voltage [V]", outputVoltage);
        Require.positive("input power [W]", inputPower);
        Require.positive("ripple [-]", ripple);
        Require.within("ripple [-]", ripple, 0, 2);
    }

    /** Inductance [H] at a switching frequency [Hz]. */
    public double inductance(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        return lineRms * lineRms * (1 - Math.sqrt(2) * lineRms / outputVoltage) / (ripple * inputPower * frequency);
    }

    /** Peak inductor current [A]. */
    public double peakCurrent() {
        return Math.sqrt(2) * inputPower / lineRms * (1 + ripple / 2);
    }
}
