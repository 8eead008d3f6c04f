package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lampproof.waveform.Span;
import lampproof.waveform.WaveformFile;
import org.junit.jupiter.api.Test;

/** What engineers stumble over when they measure simulated waveforms, with the right values by hand. */
class MeasuringFieldCasesTest {

    private static final double W = 2 * Math.PI * 50;

    @Test
    void unevenSamplesAreWeightedByTime() {
        WaveformFile file = Wave.file("time,v\n0,0\n1e-8,10\n1e-6,10\n1.01e-6,0\n1e-5,0\n");
        MeasuringPass pass = new MeasuringPass();
        Channel v = pass.channel("v");
        Window all = Window.of(file.span());
        Mean mean = pass.add(new Mean(all, v));
        RootMeanSquare rms = pass.add(new RootMeanSquare(all, v));
        pass.over(file);
        assertThat(mean.result().value()).isCloseTo(1.0, within(1e-12));
        assertThat(rms.result().value()).isCloseTo(3.15700, within(5e-6));
    }

    @Test
    void powerIsTakenOverWholeLinePeriods() {
        Window window = LineWindow.last(new Span(0, 43e-3), 50);
        MeasuringPass pass = new MeasuringPass();
        Channel v = pass.channel("v");
        Channel i = pass.channel("i");
        MeanProduct power = pass.add(new MeanProduct(window, v, i));
        RootMeanSquare rms = pass.add(new RootMeanSquare(window, v));
        Mean mean = pass.add(new Mean(window, v));
        Wave.run(pass, 0, 43e-3, 43_000, List.of(t -> 325 * Math.sin(W * t), t -> 0.1 * Math.sin(W * t)));
        assertThat(window.text()).isEqualTo("3 ms to 43 ms, 2 line periods");
        assertThat(power.result().value()).isCloseTo(16.250, within(1e-4));
        assertThat(rms.result().value()).isCloseTo(229.81, within(5e-3));
        assertThat(mean.result().value()).isCloseTo(0, within(1e-9));
    }

    @Test
    void startUpIsLeftOutOfTheSettledWindow() {
        WaveformFile file = Wave.file("time,i(led)\n0,0\n4e-3,0.060\n20e-3,0.060\n");
        MeasuringPass pass = new MeasuringPass();
        Channel i = pass.channel("i(led)");
        Mean settled = pass.add(new Mean(LineWindow.lastHalves(file.span(), 50).lastPeriod(), i));
        Mean whole = pass.add(new Mean(Window.of(file.span()), i));
        pass.over(file);
        assertThat(settled.window().text()).isEqualTo("10 ms to 20 ms, 1 line half period");
        assertThat(settled.result().value()).isCloseTo(0.0600, within(1e-12));
        assertThat(whole.result().value()).isCloseTo(0.0540, within(1e-12));
    }

    @Test
    void powerFactorOfASquareCurrentIsBelowItsDisplacement() {
        for (double sign : new double[] {1, -1}) {
            MeasuringPass pass = new MeasuringPass();
            Channel v = pass.channel("v");
            Channel i = pass.channel("i");
            Window period = new Window(0, 20e-3, 1, "line period");
            MeanProduct power = pass.add(new MeanProduct(period, v, i));
            PowerFactor factor = pass.add(new PowerFactor(period, v, i));
            Harmonics hv = pass.add(new Harmonics(period, v, 50));
            Harmonics hi = pass.add(new Harmonics(period, i, 50));
            squareAndSine(pass, 0.1 * sign);
            assertThat(power.result().value()).isCloseTo(sign * 20.690, within(5e-4));
            assertThat(factor.result().value()).isCloseTo(sign * 0.9003, within(5e-5));
            assertThat(factor.result().note()).isEqualTo(sign > 0 ? "" : "input current reversed?");
            assertThat(DisplacementFactor.of(hv, hi).value()).isCloseTo(sign, within(1e-9));
            double expected = 0;
            for (int n = 3; n <= 40; n += 2) {
                expected += 1.0 / n / n;
            }
            assertThat(TotalHarmonicDistortion.of(hi).value()).isCloseTo(Math.sqrt(expected), within(1e-9));
        }
    }

    @Test
    void windowPastTheEndOfTheRecordGivesNoFigure() {
        MeasuringPass pass = new MeasuringPass();
        Mean mean = pass.add(new Mean(Window.of(20e-3, 60e-3), pass.channel("v")));
        Wave.run(pass, 0, 45e-3, 45, List.of(t -> 1));
        assertThat(mean.result()).isEqualTo(Measured.absent("asked 20 ms to 60 ms, got 20 ms to 45 ms"));
    }

    @Test
    void flickerOfASineIsByDefinition() {
        MeasuringPass pass = new MeasuringPass();
        Channel led = pass.channel("i(led)");
        Window window = new Window(0, 20e-3, 2, "line half period");
        FlickerPercent percent = pass.add(new FlickerPercent(window, led));
        FlickerIndex index = pass.add(new FlickerIndex(window, led, 10e-6));
        Wave.run(pass, 0, 20e-3, 20_000, List.of(t -> 0.060 + 0.024 * Math.sin(2 * W * t)));
        assertThat(percent.result().value()).isCloseTo(0.400, within(1e-4));
        assertThat(index.result().value()).isCloseTo(0.12732, within(5e-6));
    }

    private static void squareAndSine(MeasuringPass pass, double level) {
        for (int k = 0; k <= 20_000; k++) {
            double t = k * 1e-6;
            double v = 325 * Math.sin(W * t);
            if (k % 10_000 == 0) {
                pass.row(t, new double[] {v, k == 10_000 ? level : -level});
                pass.row(t, new double[] {v, k == 10_000 ? -level : level});
            } else {
                pass.row(t, new double[] {v, k < 10_000 ? level : -level});
            }
        }
    }
}
