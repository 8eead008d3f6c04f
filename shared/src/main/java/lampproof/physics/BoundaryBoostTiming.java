package lampproof.physics;

/**
 * Timing of a step-up rectifier in boundary conduction with constant on-time.
 *
 * <p>{@code Re = 2 L / ton}; {@code ton = 4 L P / VM^2}; {@code toff = ton vg / (V - vg)};
 * {@code fs = VM^2 / (4 L P) (1 - (VM / V) |sin theta|)}.
 *
 * <p>Valid for a sinusoidal line whose crest stays below the output voltage, in steady state. Neglects all drops, the
 * minimum off-time and the delay before the next cycle.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 21.3.3,
 * eq. (21.65)-(21.73); inductance: Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4.
 */
public final class BoundaryBoostTiming {

    private BoundaryBoostTiming() {}

    /**
     * Resistance that the converter shows to the line.
     *
     * @param inductance inductance [H]
     * @param onTime on-time of the switch [s]
     * @return emulated resistance [Ohm]
     */
    public static double emulatedResistance(double inductance, double onTime) {
        Require.positive("inductance [H]", inductance);
        Require.positive("on-time [s]", onTime);
        return 2 * inductance / onTime;
    }

    /**
     * Constant on-time that draws a given power.
     *
     * @param inputPower mean power from the line [W]
     * @param linePeak crest of the line voltage [V]
     * @param inductance inductance [H]
     * @return on-time [s]
     */
    public static double onTime(double inputPower, double linePeak, double inductance) {
        Require.positive("input power [W]", inputPower);
        Require.positive("line peak [V]", linePeak);
        Require.positive("inductance [H]", inductance);
        return 4 * inductance * inputPower / (linePeak * linePeak);
    }

    /**
     * Time in which the inductor current falls back to zero.
     *
     * @param onTime on-time of the switch [s]
     * @param rectifiedVoltage rectified line voltage at this instant [V]
     * @param outputVoltage output voltage, above the rectified voltage [V]
     * @return off-time [s]
     */
    public static double offTime(double onTime, double rectifiedVoltage, double outputVoltage) {
        Require.positive("on-time [s]", onTime);
        Require.notNegative("rectified voltage [V]", rectifiedVoltage);
        Require.below("rectified voltage [V]", rectifiedVoltage, "output voltage [V]", outputVoltage);
        return onTime * rectifiedVoltage / (outputVoltage - rectifiedVoltage);
    }

    /**
     * Switching frequency at an angle of the line; lowest at the crest, highest at the zero crossing.
     *
     * @param inputPower mean power from the line [W]
     * @param linePeak crest of the line voltage, below the output voltage [V]
     * @param outputVoltage output voltage [V]
     * @param inductance inductance [H]
     * @param angle angle after the zero crossing of the line [rad]
     * @return switching frequency [Hz]
     */
    public static double switchingFrequency(
            double inputPower, double linePeak, double outputVoltage, double inductance, double angle) {
        Require.below("line peak [V]", linePeak, "output voltage [V]", outputVoltage);
        double highest = 1 / onTime(inputPower, linePeak, inductance);
        return highest * (1 - linePeak / outputVoltage * Math.abs(Math.sin(angle)));
    }

    /**
     * Inductance that sets the switching frequency at the crest.
     *
     * @param inputPower mean power from the line [W]
     * @param linePeak crest of the line voltage, below the output voltage [V]
     * @param outputVoltage output voltage [V]
     * @param crestFrequency switching frequency at the crest, the lowest of the half cycle [Hz]
     * @return inductance [H]
     */
    public static double inductance(double inputPower, double linePeak, double outputVoltage, double crestFrequency) {
        Require.positive("input power [W]", inputPower);
        Require.positive("crest frequency [Hz]", crestFrequency);
        Require.below("line peak [V]", linePeak, "output voltage [V]", outputVoltage);
        return linePeak * linePeak * (outputVoltage - linePeak) / (4 * inputPower * crestFrequency * outputVoltage);
    }

    /**
     * Output voltage at which the crest frequency is the same at two line voltages of one power:
     * {@code V = (b^3 - a^3) / (b^2 - a^2)} of the two line peaks.
     *
     * @param lowerPeak crest of the lower line voltage [V]
     * @param upperPeak crest of the upper line voltage [V]
     * @return output voltage [V]
     */
    public static double equalFrequencyVoltage(double lowerPeak, double upperPeak) {
        Require.positive("lower line peak [V]", lowerPeak);
        Require.below("lower line peak [V]", lowerPeak, "upper line peak [V]", upperPeak);
        return (Math.pow(upperPeak, 3) - Math.pow(lowerPeak, 3)) / (upperPeak * upperPeak - lowerPeak * lowerPeak);
    }
}
