package lampproof.physics;

import org.hipparchus.special.Gamma;

/**
 * Core loss density by the improved generalised Steinmetz equation.
 *
 * <p>{@code P = (ki / T) int |dB/dt|^a dBpp^(b-a) dt}; straight rise and fall in tr and tf:
 * {@code P = ki dBpp^(b-a) (tr (dBpp/tr)^a + tf (dBpp/tf)^a) / T}; sine {@code P = k f^a B^b} with
 * {@code ki = k / ((2 pi)^(a-1) int_0^{2 pi} |cos|^a 2^(b-a))}.
 *
 * <p>Valid in SI units [W/m3, Hz, T] within the frequency and flux range of the coefficients. Neglects bias,
 * temperature and relaxation; known to read low for duties below about 0.2.
 *
 * <p>Source: K. Venkatachalam, C. R. Sullivan, T. Abdallah, H. Tacca, Accurate prediction of ferrite core loss with
 * nonsinusoidal waveforms using only Steinmetz parameters, IEEE COMPEL 2002; J. Mühlethaler, J. Biela, J. W. Kolar,
 * A. Ecklebe, Improved core-loss calculation for magnetic components employed in power electronic systems, IEEE
 * Trans. Power Electronics 27(2), 2012.
 *
 * @param coefficient coefficient ki of the generalised equation [SI unit]
 * @param frequencyExponent exponent a of frequency [-]
 * @param fluxExponent exponent b of flux density [-]
 */
public record CoreLoss(double coefficient, double frequencyExponent, double fluxExponent) {

    /** Checks the coefficients. */
    public CoreLoss {
        Require.positive("coefficient ki", coefficient);
        Require.within("frequency exponent [-]", frequencyExponent, 1, 3);
        Require.within("flux exponent [-]", fluxExponent, 1, 4);
    }

    /**
     * Coefficients from the classical equation {@code k f^a B^b} for a sine.
     *
     * @param sineCoefficient coefficient k, for W/m3 of Hz and T [SI unit]
     * @param frequencyExponent exponent a of frequency [-]
     * @param fluxExponent exponent b of flux density [-]
     * @return the coefficients of the generalised equation
     */
    public static CoreLoss ofSine(double sineCoefficient, double frequencyExponent, double fluxExponent) {
        double factor = sineFactor(frequencyExponent, fluxExponent);
        return new CoreLoss(sineCoefficient / factor, frequencyExponent, fluxExponent);
    }

    /** Coefficient k of the classical equation for a sine [SI unit]. */
    public double sineCoefficient() {
        return coefficient * sineFactor(frequencyExponent, fluxExponent);
    }

    /** Loss density [W/m3] of a sine of a frequency [Hz] and an amplitude [T]. */
    public double sine(double frequency, double amplitude) {
        Require.notNegative("frequency [Hz]", frequency);
        Require.notNegative("flux amplitude [T]", amplitude);
        return sineCoefficient() * Math.pow(frequency, frequencyExponent) * Math.pow(amplitude, fluxExponent);
    }

    /**
     * Loss density of a flux that rises and falls along straight lines and rests for the remaining time.
     *
     * @param swing flux swing, peak to peak [T]
     * @param riseTime duration of the rise [s]
     * @param fallTime duration of the fall [s]
     * @param period period, not shorter than rise and fall together [s]
     * @return loss density [W/m3]
     */
    public double triangle(double swing, double riseTime, double fallTime, double period) {
        Require.notNegative("flux swing [T]", swing);
        Require.positive("rise time [s]", riseTime);
        Require.positive("fall time [s]", fallTime);
        Require.within("rise and fall over the period [-]", (riseTime + fallTime) / period, 0, 1 + 1e-9);
        double edges = edge(swing, riseTime) + edge(swing, fallTime);
        return coefficient * Math.pow(swing, fluxExponent - frequencyExponent) * edges / period;
    }

    /** Loss density [W/m3] of a triangle of a swing [T], a frequency [Hz] and a duty of its rise [-], without rest. */
    public double triangleOfDuty(double swing, double frequency, double duty) {
        Require.positive("frequency [Hz]", frequency);
        Require.between("duty [-]", duty, 0, 1);
        return triangle(swing, duty / frequency, (1 - duty) / frequency, 1 / frequency);
    }

    private double edge(double swing, double time) {
        return time * Math.pow(swing / time, frequencyExponent);
    }

    private static double sineFactor(double a, double b) {
        double cosines = 2 * Math.sqrt(Math.PI) * Math.exp(Gamma.logGamma((a + 1) / 2) - Gamma.logGamma(a / 2 + 1));
        return Math.pow(2 * Math.PI, a - 1) * cosines * Math.pow(2, b - a);
    }
}
