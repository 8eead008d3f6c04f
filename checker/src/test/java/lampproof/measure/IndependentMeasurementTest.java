package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import lampproof.waveform.file.WaveformFile;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ten recorded waveforms with uneven steps and vertical edges, measured a second time straight from the rows.
 *
 * <p>The second way shares nothing with the first: it cuts the rows at the window's ends beforehand, integrates by
 * Simpson's rule (exact for the square of a straight line), takes harmonics from the corners and jumps of the waveform,
 * and the running mean from the running integral.
 */
class IndependentMeasurementTest {

    private static final double CLOSE = 1e-9;
    private static final double FREQUENCY = 50;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void figuresAgree(int seed) throws IOException {
        Path path = folder.resolve("run.txt");
        Files.writeString(path, recorded(seed));
        WaveformFile file = WaveformFile.open(path);
        Window window = LineWindow.last(file.span(), FREQUENCY);
        Rows rows = Rows.of(path, window);

        MeasurementPass pass = new MeasurementPass();
        Channel v = pass.channel("v");
        Channel i = pass.channel("i");
        Mean mean = pass.add(new Mean(window, v));
        RootMeanSquare rms = pass.add(new RootMeanSquare(window, i));
        MeanProduct power = pass.add(new MeanProduct(window, v, i));
        Energy energy = pass.add(new Energy(window, v, i));
        PowerFactor factor = pass.add(new PowerFactor(window, v, i));
        Peak peak = pass.add(new Peak(window, i));
        Trough trough = pass.add(new Trough(window, i));
        PeakToPeak swing = pass.add(new PeakToPeak(window, i));
        Harmonics harmonics = pass.add(new Harmonics(window, i, FREQUENCY));
        FlickerPercent flicker = pass.add(new FlickerPercent(window, v));
        pass.over(file).requireSound();

        double[] one = new double[rows.time.length];
        java.util.Arrays.fill(one, 1);
        double square = rows.integral(rows.i, rows.i);
        double length = window.length();
        close(mean, rows.integral(rows.v, one) / length);
        close(rms, Math.sqrt(square / length));
        close(power, rows.integral(rows.v, rows.i) / length);
        close(energy, rows.integral(rows.v, rows.i));
        close(factor, rows.integral(rows.v, rows.i) / Math.sqrt(square * rows.integral(rows.v, rows.v)));
        double high = java.util.Arrays.stream(rows.i).max().orElseThrow();
        double low = java.util.Arrays.stream(rows.i).min().orElseThrow();
        close(peak, high);
        close(trough, low);
        close(swing, high - low);
        close(flicker, rows.flicker(window));
        for (int n = 1; n <= 40; n++) {
            Complex found = harmonics.amplitude(n);
            assertThat(found.subtract(rows.harmonic(n)).norm() / high).isCloseTo(0, within(CLOSE));
        }
    }

    private static void close(Measurement measurement, double expected) {
        assertThat(measurement.result().value()).isCloseTo(expected, within(CLOSE * Math.abs(expected)));
    }

    /** About 50 ms of a lamp: v stays above zero, i is alternating, both chopped now and then. */
    private static String recorded(int seed) {
        Random random = new Random(seed);
        double omega = 2 * Math.PI * FREQUENCY;
        DoubleUnaryOperator v = t -> 200 + 60 * Math.sin(2 * omega * t) + 10 * random.nextDouble();
        DoubleUnaryOperator i =
                t -> 0.1 * Math.sin(omega * t + 0.3) + 0.02 * Math.sin(3 * omega * t) + 0.001 * random.nextDouble();
        StringBuilder text = new StringBuilder("time v i\n");
        double time = 0;
        while (time < 47e-3) {
            text.append(time)
                    .append(' ')
                    .append(v.applyAsDouble(time))
                    .append(' ')
                    .append(i.applyAsDouble(time))
                    .append('\n');
            if (random.nextInt(10) == 0) {
                text.append(time)
                        .append(' ')
                        .append(v.applyAsDouble(time) - 30)
                        .append(' ')
                        .append(-0.05)
                        .append('\n');
            }
            time += Math.pow(10, -7 + 3 * random.nextDouble());
        }
        return text.toString();
    }

    /** The rows of a file within a window, with rows of their own at its two ends. */
    private static final class Rows {
        private final double[] time;
        private final double[] v;
        private final double[] i;

        private Rows(List<double[]> rows) {
            time = rows.stream().mapToDouble(r -> r[0]).toArray();
            v = rows.stream().mapToDouble(r -> r[1]).toArray();
            i = rows.stream().mapToDouble(r -> r[2]).toArray();
        }

        static Rows of(Path path, Window window) throws IOException {
            List<double[]> all = Files.readAllLines(path).stream()
                    .skip(1)
                    .map(l -> java.util.Arrays.stream(l.split(" ", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
            List<double[]> inside = new java.util.ArrayList<>();
            inside.add(between(all, window.start()));
            all.stream()
                    .filter(r -> r[0] > window.start() && r[0] < window.end())
                    .forEach(inside::add);
            all.stream().filter(r -> r[0] == window.end()).forEach(inside::add);
            return new Rows(inside);
        }

        private static double[] between(List<double[]> rows, double time) {
            for (int k = 1; k < rows.size(); k++) {
                double[] a = rows.get(k - 1);
                double[] b = rows.get(k);
                if (a[0] < time && b[0] >= time) {
                    double share = (time - a[0]) / (b[0] - a[0]);
                    return new double[] {time, (1 - share) * a[1] + share * b[1], (1 - share) * a[2] + share * b[2]};
                }
            }
            throw new IllegalStateException("not in the record");
        }

        /** Simpson's rule, summed with Kahan's correction. */
        double integral(double[] a, double[] b) {
            double sum = 0;
            double lost = 0;
            for (int k = 1; k < time.length; k++) {
                double middle = (a[k - 1] + a[k]) / 2 * ((b[k - 1] + b[k]) / 2);
                double part = (time[k] - time[k - 1]) / 6 * (a[k - 1] * b[k - 1] + 4 * middle + a[k] * b[k]) - lost;
                double next = sum + part;
                lost = next - sum - part;
                sum = next;
            }
            return sum;
        }

        /** From jumps over j n omega and changes of slope over (j n omega)^2, the ends joined to a ring. */
        Complex harmonic(int n) {
            double omega = 2 * Math.PI * FREQUENCY * n;
            Complex sum = Complex.ZERO;
            for (int k = 1; k < time.length; k++) {
                double width = time[k] - time[k - 1];
                if (width > 0) {
                    Complex before = turn(omega, time[k - 1]);
                    Complex after = turn(omega, time[k]);
                    Complex ends = after.multiply(i[k]).subtract(before.multiply(i[k - 1]));
                    double slope = (i[k] - i[k - 1]) / width;
                    sum = sum.add(ends.multiply(new Complex(0, 1 / omega)))
                            .add(after.subtract(before).multiply(slope / omega / omega));
                }
            }
            return sum.multiply(2 / (time[time.length - 1] - time[0]));
        }

        private static Complex turn(double omega, double time) {
            return new Complex(Math.cos(omega * time), -Math.sin(omega * time));
        }

        /** Percent flicker after a running mean of 0.1 ms, on the same sixteenths of it. */
        double flicker(Window window) {
            double step = 0.1e-3 / 16;
            double high = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            for (int k = 16; k * step <= window.length() * (1 + 1e-9); k++) {
                double mean = (area(window.start() + k * step) - area(window.start() + (k - 16) * step)) / 0.1e-3;
                high = Math.max(high, mean);
                low = Math.min(low, mean);
            }
            return (high - low) / (high + low);
        }

        /** The integral of v from the start of the window. */
        private double area(double to) {
            double sum = 0;
            for (int k = 1; k < time.length && time[k - 1] < to; k++) {
                double end = Math.min(to, time[k]);
                double share = time[k] > time[k - 1] ? (end - time[k - 1]) / (time[k] - time[k - 1]) : 0;
                sum += (end - time[k - 1]) * (v[k - 1] + (v[k] - v[k - 1]) * share / 2);
            }
            return sum;
        }
    }
}
