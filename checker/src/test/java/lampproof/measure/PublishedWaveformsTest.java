package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Waveforms whose figures are published or follow from one line of mathematics. */
class PublishedWaveformsTest {

    /** Erickson and Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, app. A, pp. 1037-1042: 3.76 A. */
    @Test
    void transistorCurrentOfSixSegments() {
        MeasurementPass pass = new MeasurementPass();
        RootMeanSquare rms = pass.add(new RootMeanSquare(Window.of(0, 10e-6), pass.channel("i")));
        Wave.run(
                pass,
                new double[] {0, 0},
                new double[] {0.2e-6, 20},
                new double[] {0.4e-6, 20},
                new double[] {0.5e-6, 2},
                new double[] {5.5e-6, 2},
                new double[] {5.7e-6, 0},
                new double[] {10e-6, 0});
        assertThat(rms.result().value()).isCloseTo(3.765, within(5e-4));
    }

    /** The same source, table 3.1: a triangle of peak ripple equal to its mean adds a third to the square. */
    @ParameterizedTest
    @CsvSource({"0.1414, 1.0033", "1, 1.3333"})
    void rippleAddsToTheSquare(double ripple, double factor) {
        MeasurementPass pass = new MeasurementPass();
        Channel i = pass.channel("i");
        RootMeanSquare rms = pass.add(new RootMeanSquare(Window.of(0, 1), i));
        double exact = 1 + ripple * ripple / 3;
        Wave.run(pass, new double[] {0, 1 - ripple}, new double[] {0.3, 1 + ripple}, new double[] {1, 1 - ripple});
        double square = rms.result().value() * rms.result().value();
        assertThat(square).isCloseTo(exact, within(1e-12));
        assertThat(ripple < 1 ? Math.sqrt(square) : square).isCloseTo(factor, within(5e-5));
    }

    /**
     * The same source, sect. 20.3: a peak-detecting rectifier has 136 % distortion, distortion factor 59 %. Its current goes on
     * with opposite sign after half a period, wherever that begins.
     */
    @ParameterizedTest
    @CsvSource({"0, 20e-3", "0, 10e-3", "3e-3, 13e-3"})
    void peakDetectingRectifier(double start, double end) {
        double[] percent = {100, 91, 73, 52, 32, 19, 15, 15, 13, 9};
        DoubleUnaryOperator wave = t -> {
            double sum = 0;
            for (int k = 0; k < percent.length; k++) {
                sum += percent[k] / 100 * Math.sin((2 * k + 1) * 2 * Math.PI * 50 * t + k * k);
            }
            return sum;
        };
        MeasurementPass pass = new MeasurementPass();
        Channel i = pass.channel("i");
        Window window = Window.of(start, end);
        Harmonics harmonics = pass.add(new Harmonics(window, i, 50));
        RootMeanSquare rms = pass.add(new RootMeanSquare(window, i));
        Wave.run(pass, start, end, 40_000, List.of(wave));
        assertThat(TotalHarmonicDistortion.of(harmonics).value()).isCloseTo(1.356, within(5e-4));
        assertThat(harmonics.rms(1).value() / rms.result().value()).isCloseTo(0.593, within(5e-4));
        for (int k = 0; k < percent.length; k++) {
            assertThat(harmonics.rms(2 * k + 1).value() / harmonics.rms(1).value())
                    .isCloseTo(percent[k] / 100, within(1e-5));
            assertThat(harmonics.rms(2 * k + 2).value()).isCloseTo(0, within(1e-9));
        }
    }

    /** A sine of 40 points: the straight lines between them have sinc squared of its amplitude, the samples all of it. */
    @Test
    void sampledAndStraightWaveformsAgreeOnASmoothCurrent() {
        for (Interpolation interpolation : Interpolation.values()) {
            MeasurementPass pass = new MeasurementPass(interpolation);
            Channel i = pass.channel("i");
            Window window = new Window(0, 20e-3, 1, "line period");
            RootMeanSquare rms = pass.add(new RootMeanSquare(window, i));
            Harmonics harmonics = pass.add(new Harmonics(window, i, 50));
            Wave.run(pass, 0, 20e-3, 40, List.of(t -> Math.sin(2 * Math.PI * 50 * t)));
            double expected = interpolation == Interpolation.SAMPLED ? 1 : Math.sqrt((2 + Math.cos(Math.PI / 20)) / 3);
            assertThat(rms.result().value() * Math.sqrt(2)).isCloseTo(expected, within(1e-12));
            double sinc = Math.sin(Math.PI / 40) / (Math.PI / 40);
            assertThat(harmonics.rms(1).value() * Math.sqrt(2))
                    .isCloseTo(interpolation == Interpolation.SAMPLED ? 1 : sinc * sinc, within(1e-12));
        }
    }

    /** Percent flicker and flicker index of common shapes, by integration of the definitions. */
    @ParameterizedTest
    @CsvSource({
        "RECTIFIED, 1, 0.2105",
        "SQUARED, 1, 0.3183",
        "HALF, 1, 0.500",
        "QUARTER, 1, 0.750",
        "SHALLOW, 0.08, 0.02546",
        "DEEP, 0.30, 0.09549",
        "CUT, 1, 0.4184"
    })
    void flickerOfCommonShapes(String shape, double percent, double index) {
        MeasurementPass pass = new MeasurementPass();
        Channel light = pass.channel("light");
        Window window = new Window(0, 20e-3, 2, "line half period");
        FlickerPercent flicker = pass.add(new FlickerPercent(window, light, 1e-6));
        FlickerIndex flickerIndex = pass.add(new FlickerIndex(window, light, 1e-6));
        Wave.run(pass, 0, 20e-3, 80_000, List.of(shape(shape)));
        assertThat(flicker.result().value()).isCloseTo(percent, within(1e-3));
        assertThat(flickerIndex.result().value()).isCloseTo(index, within(1e-4));
    }

    @Test
    void darknessHasNoFlicker() {
        MeasurementPass pass = new MeasurementPass();
        Channel light = pass.channel("light");
        FlickerPercent flicker = pass.add(new FlickerPercent(Window.of(0, 1), light));
        FlickerIndex index = pass.add(new FlickerIndex(Window.of(0, 1), light));
        Wave.run(pass, 0, 1, 10, List.of(t -> -0.01));
        assertThat(flicker.result()).isEqualTo(Measured.absent("there is no light"));
        assertThat(index.result()).isEqualTo(Measured.absent("there is no light"));
    }

    private static DoubleUnaryOperator shape(String name) {
        DoubleUnaryOperator angle = t -> 2 * Math.PI * 100 * t;
        return switch (name) {
            case "RECTIFIED" -> t -> Math.abs(Math.sin(angle.applyAsDouble(t) / 2));
            case "SQUARED" -> t -> Math.pow(Math.sin(angle.applyAsDouble(t) / 2), 2);
            case "HALF" -> t -> t * 100 % 1 < 0.5 ? 1 : 0;
            case "QUARTER" -> t -> t * 100 % 1 < 0.25 ? 1 : 0;
            case "SHALLOW" -> t -> 1 + 0.08 * Math.sin(angle.applyAsDouble(t));
            case "DEEP" -> t -> 1 + 0.30 * Math.sin(angle.applyAsDouble(t));
            default -> t -> Math.max(0, Math.abs(Math.sin(angle.applyAsDouble(t) / 2)) - 0.5);
        };
    }
}
