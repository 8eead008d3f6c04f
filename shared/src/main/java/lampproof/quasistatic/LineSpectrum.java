package lampproof.quasistatic;

import java.util.Arrays;
import java.util.List;
import lampproof.physics.HarmonicSpectrum;

/**
 * Fourier coefficients of a line current that repeats with opposite sign in the other half cycle: odd orders only.
 *
 * @param magnitudes rms currents by order
 * @param displacementFactor cosine of the angle of the fundamental [-]
 */
record LineSpectrum(HarmonicSpectrum magnitudes, double displacementFactor) {

    static LineSpectrum of(List<AnglePoint> points, int highestOrder) {
        double[] sine = new double[(highestOrder + 1) / 2];
        double[] cosine = new double[sine.length];
        for (AnglePoint point : points) {
            add(point, sine, cosine);
        }
        double[] rms = new double[sine.length];
        double scale = Math.sqrt(2) / points.size();
        for (int k = 0; k < rms.length; k++) {
            rms[k] = scale * Math.sqrt(sine[k] * sine[k] + cosine[k] * cosine[k]);
        }
        double[] higher = Arrays.copyOfRange(rms, 1, rms.length);
        return new LineSpectrum(HarmonicSpectrum.ofOdd(rms[0], higher), sine[0] / Math.hypot(sine[0], cosine[0]));
    }

    /** Adds a point to every odd order, turning by two angles from one order to the next. */
    private static void add(AnglePoint point, double[] sine, double[] cosine) {
        double s = Math.sin(point.angle());
        double c = Math.cos(point.angle());
        double doubleSine = 2 * s * c;
        double doubleCosine = 1 - 2 * s * s;
        for (int k = 0; k < sine.length; k++) {
            sine[k] += point.lineCurrent() * s;
            cosine[k] += point.lineCurrent() * c;
            double next = s * doubleCosine + c * doubleSine;
            c = c * doubleCosine - s * doubleSine;
            s = next;
        }
    }
}
