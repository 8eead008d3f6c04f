package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Light of nine lamps, captured by others with a photodiode.
 *
 * <p>Source: yeutterg/beautiful-flicker, commit 59e8c2a5; tolerances as stated with its list of right values: percent
 * flicker 0.3 points after a running mean of 0.1 ms, duty 0.005.
 */
class CapturedLampsTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 8, 9})
    void flickerOfLampsOnTheLine(int lamp) {
        Map<String, String> expected = expected(lamp);
        WaveformFile file = open(lamp);
        MeasurementPass first = new MeasurementPass();
        Window all = Window.of(file.span());
        Channel light = first.channel("column 2");
        FlickerPercent flicker = first.add(new FlickerPercent(all, light));
        Peak peak = first.add(new Peak(all, light));
        Trough trough = first.add(new Trough(all, light));
        Mean mean = first.add(new Mean(all, light));
        FundamentalFrequency frequency = first.add(new FundamentalFrequency(all, light, 95, 125));
        first.over(file);
        double raw = 100
                * (peak.result().value() - trough.result().value())
                / (peak.result().value() + trough.result().value());
        assertThat(100 * flicker.result().value()).isCloseTo(number(expected, "pf_boxcar_0p1ms"), within(0.3));
        assertThat(raw).isCloseTo(number(expected, "percent_flicker_raw"), within(0.01));
        assertThat(mean.result().value()).isCloseTo(number(expected, "mean_V"), within(1e-4));
        assertThat(frequency.result().value()).isCloseTo(number(expected, "f_fit_Hz"), within(0.2));
        MeasurementPass second = new MeasurementPass();
        Window whole = LineWindow.last(file.span(), frequency.result().value());
        FlickerIndex index = second.add(new FlickerIndex(whole, second.channel("column 2")));
        Harmonics harmonics = second.add(new Harmonics(
                whole, second.channel("column 2"), frequency.result().value()));
        Mean wholeMean = second.add(new Mean(whole, second.channel("column 2")));
        second.over(file);
        double largest =
                100 * harmonics.amplitude(1).norm() / wholeMean.result().value();
        assertThat(index.result().value()).isCloseTo(number(expected, "flicker_index_3kHz"), within(0.001));
        assertThat(largest).isCloseTo(number(expected, "m120_pct"), within(0.05 * number(expected, "m120_pct")));
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5})
    void pulseWidthModulatedLamps(int lamp) {
        Map<String, String> expected = expected(lamp);
        WaveformFile file = open(lamp);
        MeasurementPass first = new MeasurementPass();
        Window all = Window.of(file.span());
        Channel light = first.channel("column 2");
        Peak peak = first.add(new Peak(all, light));
        Trough trough = first.add(new Trough(all, light));
        FlickerPercent flicker = first.add(new FlickerPercent(all, light, 4e-6));
        first.over(file);
        double swing = peak.result().value() - trough.result().value();
        MeasurementPass second = new MeasurementPass();
        Gate gate = new Gate(second.channel("column 2"), trough.result().value() + swing / 2, 0.1 * swing);
        Duty duty = second.add(new Duty(all, gate));
        SwitchingFrequency frequency = second.add(new SwitchingFrequency(all, gate));
        second.over(file);
        assertThat(flicker.result().value()).isEqualTo(1);
        assertThat(duty.result().value()).isCloseTo(number(expected, "duty"), within(0.005));
        assertThat(frequency.result().value()).isCloseTo(number(expected, "f_fit_Hz"), within(1.0));
    }

    @Test
    void lampWithoutRippleGetsNoFrequency() {
        WaveformFile file = open(6);
        MeasurementPass pass = new MeasurementPass();
        Window all = Window.of(file.span());
        Channel light = pass.channel("column 2");
        FlickerPercent flicker = pass.add(new FlickerPercent(all, light));
        FundamentalFrequency frequency = pass.add(new FundamentalFrequency(all, light, 95, 125));
        pass.over(file);
        assertThat(100 * flicker.result().value()).isLessThan(0.3);
        assertThat(frequency.result()).isEqualTo(Measured.absent("no dominant frequency"));
    }

    private static Map<String, String> expected(int lamp) {
        return Captured.expected("light/expected.csv", "lamp-0" + lamp + ".csv");
    }

    private static WaveformFile open(int lamp) {
        return WaveformFile.open(Captured.file("light/lamp-0" + lamp + ".csv"));
    }

    private static double number(Map<String, String> expected, String name) {
        return Double.parseDouble(expected.get(name));
    }
}
