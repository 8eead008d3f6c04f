package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lampproof.waveform.BlockWriter;
import lampproof.waveform.Span;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;

/** What engineers stumble over when they measure simulated waveforms, with the right values by hand. */
class MeasurementFieldCasesTest {

    private static final double W = 2 * Math.PI * 50;

    @Test
    void unevenSamplesAreWeightedByTime() {
        WaveformFile file = Wave.file("time,v\n0,0\n1e-8,10\n1e-6,10\n1.01e-6,0\n1e-5,0\n");
        MeasurementPass pass = new MeasurementPass();
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
        MeasurementPass pass = new MeasurementPass();
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
        MeasurementPass pass = new MeasurementPass();
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
            MeasurementPass pass = new MeasurementPass();
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
        MeasurementPass pass = new MeasurementPass();
        Mean mean = pass.add(new Mean(Window.of(20e-3, 60e-3), pass.channel("v")));
        Wave.run(pass, 0, 45e-3, 45, List.of(t -> 1));
        assertThat(mean.result()).isEqualTo(Measured.absent("asked 20 ms to 60 ms, got 20 ms to 45 ms"));
    }

    @Test
    void flickerOfASineIsByDefinition() {
        MeasurementPass pass = new MeasurementPass();
        Channel led = pass.channel("i(led)");
        Window window = new Window(0, 20e-3, 2, "line half period");
        FlickerPercent percent = pass.add(new FlickerPercent(window, led));
        FlickerIndex index = pass.add(new FlickerIndex(window, led, 10e-6));
        Wave.run(pass, 0, 20e-3, 20_000, List.of(t -> 0.060 + 0.024 * Math.sin(2 * W * t)));
        assertThat(percent.result().value()).isCloseTo(0.400, within(1e-4));
        assertThat(index.result().value()).isCloseTo(0.12732, within(5e-6));
    }

    @Test
    void efficiencyCountsTheEnergyOfTheStores() {
        double released = StoredEnergy.ofCapacitor(4.7e-6, 330) - StoredEnergy.ofCapacitor(4.7e-6, 318);
        assertThat(released).isCloseTo(18.27e-3, within(5e-6));
        assertThat(released / 20e-3).isCloseTo(0.9137, within(5e-5));
        assertThat(Efficiency.of(Measured.of(9.0), Measured.of(9.2), released, 20e-3)
                        .value())
                .isCloseTo(0.9280, within(5e-5));
        assertThat(Efficiency.of(Measured.of(9.0), Measured.of(9.2), 0, 20e-3))
                .isEqualTo(Measured.absent("an efficiency of 102.2 % is impossible: not steady, or a power is wrong"));
        assertThat(Efficiency.of(Measured.of(-9.0), Measured.of(8.0), 0, 20e-3))
                .isEqualTo(Measured.absent(
                        "power in -9.00 W and power out 8.00 W have opposite signs:" + " input current reversed?"));
        assertThat(Efficiency.of(Measured.of(0), Measured.of(0), 0, 20e-3).present())
                .isFalse();
    }

    @Test
    void powerOfAFeedingSourceIsTurnedOnceAndSaidSo() {
        WaveformFile file = Wave.file("time,p_v1\n0,-3.25\n1e-6,-6.5\n3e-6,-6.5\n");
        Measured power = SourcePower.reversed(Measured.of(Wave.mean(file, "p_v1")));
        assertThat(power.value()).isCloseTo(5.95833, within(5e-6));
        assertThat(power.note()).isEqualTo("sign turned");
    }

    @Test
    void powerThatFlowsBackStaysNegative() {
        MeasurementPass pass = new MeasurementPass();
        Channel v = pass.channel("v");
        Channel i = pass.channel("i(v1)");
        SourcePower feeding = pass.add(new SourcePower(Window.of(0, 2), v, i));
        Wave.run(pass, new double[] {0, 10, -1}, new double[] {1, 10, -1}, new double[] {1, 10, 3}, new double[] {
            2, 10, 3
        });
        assertThat(feeding.result().value()).isCloseTo(-10, within(1e-12));
        assertThat(feeding.result().note()).isEqualTo("sign turned; input current reversed?");
    }

    @Test
    void spikeIsReportedRawAndWithItsWidth() {
        WaveformFile file =
                Wave.file("t_ns,v_drain\n0,340\n100,340\n100.4,612\n100.8,338\n101.2,352\n101.6,340\n200,340\n");
        MeasurementPass pass = new MeasurementPass();
        Channel v = pass.channel("v_drain");
        Peak peak = pass.add(new Peak(Window.of(file.span()), v));
        SpikeWidth width = pass.add(new SpikeWidth(Window.of(file.span()), v, SpikeWidth.ABOVE_PLATEAU * 340));
        pass.over(file);
        assertThat(peak.result().value()).isEqualTo(612);
        assertThat(width.result().value()).isCloseTo(0.747e-9, within(5e-13));
        assertThat(width.result().note()).isEqualTo("peak on a single point: step too coarse to know");
    }

    @Test
    void measureOfTheSimulatorIsCheckedAgainstItsWindow() {
        List<LoggedMeasure> measures = LoggedMeasure.of("""
                vr                  =   2.29810e+02 from=  2.00000e-02 to=  4.50000e-02
                Error: measure  tcross  when(WHEN) : out of interval
                 .meas tran tcross when v(in)=400 rise=1 failed!
                """);
        assertThat(measures).extracting(LoggedMeasure::name).containsExactly("vr", "tcross");
        assertThat(measures.get(0).result().value()).isEqualTo(229.81);
        assertThat(measures.get(0).over(Window.of(20e-3, 60e-3)))
                .isEqualTo(Measured.absent("vr: asked 20 ms to 60 ms, got 20 ms to 45 ms"));
        assertThat(measures.get(0).over(Window.of(20e-3, 45e-3)).value()).isEqualTo(229.81);
        assertThat(measures.get(1).result()).isEqualTo(Measured.absent("tcross: failed"));
    }

    @Test
    void timeWithTooFewDigitsGivesNoSwitchingFigure() {
        WaveformFile file =
                Wave.file("time,v(sw)\n1.0000e-02,0\n1.0000e-02,300\n1.0000e-02,300\n1.0010e-02,300\n1.0010e-02,0\n");
        MeasurementPass pass = new MeasurementPass();
        Gate gate = new Gate(pass.channel("v(sw)"), 150);
        Window window = new Window(file.span().start(), file.span().end(), 1, "switching period");
        SwitchingFrequency frequency = pass.add(new SwitchingFrequency(window, gate));
        OnTime onTime = pass.add(new OnTime(window, gate));
        pass.over(file);
        assertThat(frequency.result())
                .isEqualTo(Measured.absent("time resolution 10 µs, switching period 10 µs:"
                        + " no switching-frequency figure can be taken"));
        assertThat(onTime.result().present()).isFalse();
    }

    @Test
    void lineRippleAndSwitchingRippleAreSeparated() {
        MeasurementPass pass = new MeasurementPass();
        Channel led = pass.channel("i(led)");
        Window window = new Window(0, 20e-3, 2, "line half period");
        FlickerPercent percent = pass.add(new FlickerPercent(window, led));
        FlickerPercent raw = pass.add(new FlickerPercent(window, led, 1e-7));
        LineRipple slow = pass.add(new LineRipple(window, led, 50));
        SwitchingRipple fast = pass.add(new SwitchingRipple(window, led, 50));
        Wave.run(
                pass,
                0,
                20e-3,
                100_000,
                List.of(t -> 0.060 + 0.024 * Math.sin(2 * W * t) + 0.010 * triangle(50e3 * t)));
        assertThat(percent.result().value()).isCloseTo(0.400, within(5e-4));
        assertThat(raw.result().value()).isCloseTo(34.0 / 60, within(5e-3));
        assertThat(slow.result().value()).isCloseTo(0.048, within(1e-4));
        assertThat(fast.result().value()).isCloseTo(0.020, within(4e-4));
    }

    /** A ramp of 20 000 pieces, its window cut out of the middle of two of them: integrals of t and of its square. */
    @Test
    void aWindowMayBeginAndEndWithinPiecesFarApart() {
        double start = 0.50003;
        double end = 1.70007;
        Window window = Window.of(start, end);
        MeasurementPass pass = new MeasurementPass();
        Channel ramp = pass.channel("v");
        Mean mean = pass.add(new Mean(window, ramp));
        RootMeanSquare rms = pass.add(new RootMeanSquare(window, ramp));
        PeakToPeak swing = pass.add(new PeakToPeak(window, ramp));
        Wave.run(pass, 0, 2, 20_000, List.of(t -> t));
        assertThat(mean.result().value()).isCloseTo((start + end) / 2, within(1e-12));
        double square = (Math.pow(end, 3) - Math.pow(start, 3)) / 3 / (end - start);
        assertThat(rms.result().value()).isCloseTo(Math.sqrt(square), within(1e-12));
        assertThat(swing.result().value()).isCloseTo(end - start, within(1e-12));
    }

    /** A triangle between -1 and 1 of period 1. */
    private static double triangle(double x) {
        return 4 * Math.abs(x - Math.floor(x + 0.5)) - 1;
    }

    private static void squareAndSine(MeasurementPass pass, double level) {
        BlockWriter rows = new BlockWriter(2, pass);
        for (int k = 0; k <= 20_000; k++) {
            double t = k * 1e-6;
            double v = 325 * Math.sin(W * t);
            if (k % 10_000 == 0) {
                rows.row(t, new double[] {v, k == 10_000 ? level : -level});
                rows.row(t, new double[] {v, k == 10_000 ? -level : level});
            } else {
                rows.row(t, new double[] {v, k < 10_000 ? level : -level});
            }
        }
        rows.end();
    }
}
