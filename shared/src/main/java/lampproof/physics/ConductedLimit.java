package lampproof.physics;

import java.util.OptionalDouble;

/**
 * Limits of radio-frequency voltage at the mains terminals of lighting equipment.
 *
 * <p>Quasi-peak in dBuV: 9-50 kHz 110; 50-150 kHz 90 to 80; 150-500 kHz 66 to 56; 0.5-5 MHz 56; 5-30 MHz 60. Average:
 * 10 lower from 150 kHz. Sloping limits are straight over the logarithm of frequency.
 *
 * <p>Valid from 9 kHz to 30 MHz; at the edge of two bands the lower limit holds. Calculation is no proof of
 * compliance.
 *
 * <p>Source: 47 CFR 18.307 (a) and (b); CISPR 15 and EN 55015 use the same rows (from memory).
 */
public final class ConductedLimit {

    private ConductedLimit() {}

    /** Quasi-peak limit [dBuV] at a frequency [Hz]; empty outside 9 kHz to 30 MHz. */
    public static OptionalDouble quasiPeak(double frequency) {
        if (frequency < 9e3 || frequency > 30e6) {
            return OptionalDouble.empty();
        }
        if (frequency < 50e3) {
            return OptionalDouble.of(110);
        }
        return OptionalDouble.of(frequency < 150e3 ? slope(frequency, 50e3, 90, 150e3, 80) : radio(frequency));
    }

    /** Average limit [dBuV] at a frequency [Hz]; empty outside 150 kHz to 30 MHz. */
    public static OptionalDouble average(double frequency) {
        return frequency < 150e3 || frequency > 30e6
                ? OptionalDouble.empty()
                : OptionalDouble.of(radio(frequency) - 10);
    }

    /** Level [dBuV] of an rms voltage [V]. */
    public static double level(double voltage) {
        Require.positive("voltage [V]", voltage);
        return 20 * Math.log10(voltage / 1e-6);
    }

    private static double radio(double frequency) {
        if (frequency < 500e3) {
            return slope(frequency, 150e3, 66, 500e3, 56);
        }
        return frequency <= 5e6 ? 56 : 60;
    }

    private static double slope(double frequency, double low, double atLow, double high, double atHigh) {
        return atLow + (atHigh - atLow) * Math.log(frequency / low) / Math.log(high / low);
    }
}
