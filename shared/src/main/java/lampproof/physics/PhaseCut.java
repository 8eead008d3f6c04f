package lampproof.physics;

/**
 * What a phase-cut dimmer leaves of a sinusoidal line.
 *
 * <p>{@code Vrms / Vac = sqrt(1 - alpha / pi + sin(2 alpha) / (2 pi))}; each thyristor of a resistive load R: mean
 * {@code VM (1 + cos alpha) / (2 pi R)}, rms {@code Irms / sqrt 2}.
 *
 * <p>Valid for a removed angle from 0 to pi, alike for leading and trailing edge. The ratio is also the power factor
 * of a resistive load. Neglects the drop of the switch.
 *
 * <p>Source: P. S. Bimbhra, Power Electronics, ex. 9.2.
 */
public final class PhaseCut {

    private PhaseCut() {}

    /**
     * Rms voltage over that of the full line; the power factor of a resistive load.
     *
     * @param removedAngle angle removed from each half cycle [rad]
     * @return rms ratio [-]
     */
    public static double rmsRatio(double removedAngle) {
        Require.within("removed angle [rad]", removedAngle, 0, Math.PI);
        return Math.sqrt(1 - removedAngle / Math.PI + Math.sin(2 * removedAngle) / (2 * Math.PI));
    }

    /**
     * Mean of the rectified voltage.
     *
     * @param linePeak crest of the full line voltage [V]
     * @param removedAngle angle removed from each half cycle [rad]
     * @return mean voltage [V]
     */
    public static double rectifiedMean(double linePeak, double removedAngle) {
        Require.notNegative("line peak [V]", linePeak);
        Require.within("removed angle [rad]", removedAngle, 0, Math.PI);
        return linePeak * (1 + Math.cos(removedAngle)) / Math.PI;
    }

    /**
     * Mean current of each of two thyristors.
     *
     * @param linePeak crest of the full line voltage [V]
     * @param resistance load resistance [Ohm]
     * @param removedAngle angle removed from each half cycle [rad]
     * @return mean current [A]
     */
    public static double thyristorMean(double linePeak, double resistance, double removedAngle) {
        Require.positive("resistance [Ohm]", resistance);
        return rectifiedMean(linePeak, removedAngle) / (2 * resistance);
    }

    /**
     * Rms current of each of two thyristors.
     *
     * @param linePeak crest of the full line voltage [V]
     * @param resistance load resistance [Ohm]
     * @param removedAngle angle removed from each half cycle [rad]
     * @return rms current [A]
     */
    public static double thyristorRms(double linePeak, double resistance, double removedAngle) {
        Require.notNegative("line peak [V]", linePeak);
        Require.positive("resistance [Ohm]", resistance);
        return linePeak / 2 * rmsRatio(removedAngle) / resistance;
    }
}
